from spotblue._numbers.base import *
