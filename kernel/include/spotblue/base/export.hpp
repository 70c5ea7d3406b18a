#pragma once
/// @file
/// Marks what the shared libraries show. All else is compiled hidden, so that nothing of ours or of
/// the libraries beneath gets in the way of a program that has its own.

/// Before a public function; between `class` and the name of a class with members defined in a
/// source file or of an exception, which is known again across libraries by its exported type.
#define SPOTBLUE_EXPORT [[gnu::visibility("default")]]
