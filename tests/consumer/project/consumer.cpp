#include <iostream>
#include <spotblue/base/error.hpp>
#include <spotblue/base/version.hpp>
#include <spotblue/geometry/read.hpp>
#include <spotblue/standards/iso286.hpp>

int main() {
  using namespace spotblue;
  std::cout << kVersion << ": 44 H7 ends at " << limits(44_mm, "H7").upper.in_mm() << " mm\n";
  try {
    static_cast<void>(read_step("missing.step", {}, Completeness::all_or_error));
  } catch (const Error& error) {
    return error.code() == ErrorCode::file_access ? 0 : 1;
  }
  return 1;
}
