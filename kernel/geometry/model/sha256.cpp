#include "geometry/model/sha256.hpp"

#include <fmt/format.h>
#include <openssl/evp.h>

#include <array>

#include "spotblue/base/error.hpp"

namespace spotblue {

std::string sha256(std::string_view bytes) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned int length = 0;
  if (EVP_Digest(bytes.data(), bytes.size(), digest.data(), &length, EVP_sha256(), nullptr) != 1) {
    throw Error(ErrorCode::system, {}, "no SHA-256 to be had from OpenSSL",
                "check OpenSSL's settings");
  }
  std::string hex;
  for (unsigned int i = 0; i < length; ++i) {
    hex += fmt::format("{:02x}", digest.at(i));
  }
  return hex;
}

}  // namespace spotblue
