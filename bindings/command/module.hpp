#pragma once
/// @file
/// The door between the program and its module library.

#include "command/given.hpp"

extern "C" {
/// The version of spotblue that the library was built as.
const char* spotblue_verbs_version();
/// Runs a verb and gives the exit code; what is wrong it says itself, nothing is thrown.
int spotblue_verbs_run(const spotblue::command::Given& given);
}
