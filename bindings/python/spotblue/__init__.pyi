from spotblue import base as base, errors as errors, mechanics as mechanics, standards as standards
from spotblue._kernel import *
from spotblue.base import LengthUnit as LengthUnit, Outcome as Outcome
from spotblue.errors import (
    BadInputError as BadInputError,
    Error as Error,
    FileAccessError as FileAccessError,
    IncompleteError as IncompleteError,
    MachineError as MachineError,
    NotInStandardError as NotInStandardError,
    OpenCascadeError as OpenCascadeError,
    StoppedError as StoppedError,
    UnreadableError as UnreadableError,
)
from spotblue.shelf.runner import library as library
from spotblue.shelf.which import which as which
from spotblue.values import from_json as from_json, to_json as to_json
