#!/usr/bin/python3
"""Validates JSON files against a JSON Schema: validate.py SCHEMA FILE...

Prints one line per fault and exits 3 when there is any (1 is a failure of its own). Needs Debian's python3-jsonschema.
"""

import json
import sys

import jsonschema


def no_constant(name):
    raise ValueError(f"{name} is not JSON")


def main(schema_path, *paths):
    with open(schema_path, encoding="utf-8") as stream:
        schema = json.load(stream)
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    faults = 0
    for path in paths:
        with open(path, encoding="utf-8") as stream:
            instance = json.load(stream, parse_constant=no_constant)
        for error in validator.iter_errors(instance):
            print(f"{path}: {'/'.join(map(str, error.absolute_path))}: {error.message[:200]}")
            faults += 1
    return 3 if faults else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
