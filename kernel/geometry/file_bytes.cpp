#include "geometry/file_bytes.hpp"

#include <fmt/format.h>
#include <openssl/evp.h>

#include <array>
#include <cstdint>
#include <fstream>
#include <system_error>

#include "spotblue/base/error.hpp"

namespace spotblue {

namespace fs = std::filesystem;

std::string read_bytes(const fs::path& file, double most_mb) {
  const auto refuse = [&](ErrorCode code, const std::string& what, const std::string& cure) {
    return Error(code, {file.string(), ""}, what, cure);
  };
  std::error_code trouble;
  const fs::file_status status = fs::status(file, trouble);
  if (!fs::exists(status)) {
    throw refuse(ErrorCode::file_access, "there is no such file", "check the path");
  }
  if (fs::is_directory(status)) {
    throw refuse(ErrorCode::file_access, "this is a folder", "name the STEP file in it");
  }
  if (!fs::is_regular_file(status)) {
    throw refuse(ErrorCode::file_access, "this is no ordinary file", "name a STEP file");
  }
  const auto size = static_cast<double>(fs::file_size(file, trouble));
  std::ifstream in(file, std::ios::binary);
  if (trouble || !in) {
    throw refuse(ErrorCode::file_access, "the file can not be opened", "check who may read it");
  }
  if (size > most_mb * 1e6) {
    throw refuse(
        ErrorCode::unreadable,
        fmt::format("the file has {:.1f} MB, more than the limit of {:g} MB", size / 1e6, most_mb),
        "raise the limit or split the file");
  }
  std::string bytes(static_cast<std::size_t>(size), '\0');
  in.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  bytes.resize(static_cast<std::size_t>(in.gcount()));
  if (in.bad()) {
    throw refuse(ErrorCode::file_access, "the file can not be read", "check the disk");
  }
  if (bytes.empty()) {
    throw refuse(ErrorCode::unreadable, "the file is empty", "export it again");
  }
  return bytes;
}

std::string_view without_byte_order_mark(std::string_view text) {
  constexpr std::string_view kMark = "\xEF\xBB\xBF";
  text.remove_prefix(text.starts_with(kMark) ? kMark.size() : 0);
  return text;
}

void drop_byte_order_mark(std::string& text) {
  text.erase(0, text.size() - without_byte_order_mark(text).size());
}

void write_bytes(const fs::path& file, std::string_view bytes) {
  std::error_code unknown;
  const fs::file_status status = fs::status(file, unknown);
  if (fs::exists(status) && !fs::is_regular_file(status)) {
    throw Error(ErrorCode::file_access, {file.string(), ""}, "this is no ordinary file",
                "name a STEP file");
  }
  // A link stays, and what it leads to is replaced.
  const fs::path whole = fs::weakly_canonical(file, unknown);
  const fs::path target = whole.empty() ? file : whole;
  fs::path partial = target;
  partial += ".partial";
  std::ofstream out(partial, std::ios::binary);
  out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  out.close();
  std::error_code trouble;
  if (out) {
    fs::rename(partial, target, trouble);
  }
  if (!out || trouble) {
    std::error_code ignored;
    fs::remove(partial, ignored);
    throw Error(ErrorCode::file_access, {file.string(), ""}, "the file cannot be written",
                "check that its folder exists, may be written and has room");
  }
}

std::string sha256(std::string_view bytes) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned int length = 0;
  if (EVP_Digest(bytes.data(), bytes.size(), digest.data(), &length, EVP_sha256(), nullptr) != 1) {
    throw Error(ErrorCode::kernel_failure, {}, "no SHA-256 to be had from OpenSSL",
                "check OpenSSL's settings");
  }
  std::string hex;
  for (unsigned int i = 0; i < length; ++i) {
    hex += fmt::format("{:02x}", digest.at(i));
  }
  return hex;
}

}  // namespace spotblue
