#pragma once
// What the fuzz targets share: whatever bytes a reader is given, it gives a result or one Error
// that a person can act on.

#include <unistd.h>

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>

#include "spotblue/base/error.hpp"

namespace spotblue::fuzz {

// Ends the run where `holds` is not so: libFuzzer keeps the bytes that led here.
inline void demand(bool holds, std::string_view what) {
  if (!holds) {
    std::fprintf(stderr, "not so: %.*s\n", static_cast<int>(what.size()), what.data());
    std::abort();
  }
}

// `file`: what the error must name, or the folder that it lies in; empty where there is none.
inline void demand_clear(const Error& error, std::string_view file) {
  const std::string_view what = error.what();
  demand(file.empty() == error.file().empty() && error.file().starts_with(file),
         "the error names its file");
  demand(!error.rule().empty(), "the error names the rule");
  demand(what.size() <= kMostMessage, "the message is short");
  for (const char letter : what) {
    demand(static_cast<unsigned char>(letter) >= 0x20 && letter != 0x7F,
           "the message is one line without control letters");
  }
}

// Runs `read`; any exception but a clear Error is a find.
template <class Read>
void only_clear_errors(std::string_view file, Read read) {
  try {
    read();
  } catch (const Error& error) {
    demand_clear(error, file);
  }
}

inline std::string_view text_of(const std::uint8_t* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

// A file alone in a folder of its own, for readers that take no text.
class OneFile {
 public:
  explicit OneFile(const char* name) {
    std::string folder = std::filesystem::temp_directory_path() / "spotblue-fuzz-XXXXXX";
    demand(mkdtemp(folder.data()) != nullptr, "a folder can be made");
    path_ = std::filesystem::path(folder) / name;
  }
  ~OneFile() { std::filesystem::remove_all(path_.parent_path()); }
  OneFile(const OneFile&) = delete;
  OneFile& operator=(const OneFile&) = delete;

  const std::filesystem::path& write(std::string_view text) const {
    std::ofstream(path_, std::ios::binary) << text;
    return path_;
  }

 private:
  std::filesystem::path path_;
};

}  // namespace spotblue::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);
