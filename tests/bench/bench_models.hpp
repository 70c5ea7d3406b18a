#pragma once
/// @file
/// The two models of the benchmark: stations of housing, flanged bush, stepped shaft, washer, ring
/// and four bolts.

#include <cstddef>
#include <filesystem>

namespace spotblue::test {

/// Every station with its own sizes; only a station's four bolts are one part.
void write_unique_stations(std::size_t count, const std::filesystem::path& file);
/// One station placed `count` times, its neighbours close enough that their boxes meet.
void write_instanced_stations(std::size_t count, const std::filesystem::path& file);

}  // namespace spotblue::test
