#include <iostream>
#include <spotblue/base/error.hpp>
#include <spotblue/mechanics/stack.hpp>
#include <spotblue/standards/iso286.hpp>
#include <vector>

int main() {
  using namespace spotblue;
  const Fit press = fit(44_mm, "H7/s6");
  std::cout << "least clearance " << press.least_clearance.in_mm() << " mm\n";
  try {
    require_stack(std::vector<StackDimension>{});
  } catch (const Error& error) {
    return error.code() == ErrorCode::bad_input ? 0 : 1;
  }
  return 1;
}
