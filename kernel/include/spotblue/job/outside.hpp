#pragma once
/// @file
/// Where the files lie that a job or a mock-up may have opened.

namespace spotblue {

/// Whether a file that is named in another one may lie outside the folder of that one, links
/// followed.
enum class Outside { refused, allowed };

}  // namespace spotblue
