#include <iostream>
#include <spotblue/base/unit.hpp>
#include <spotblue/base/version.hpp>
#include <spotblue/geometry/region.hpp>

int main() {
  using namespace spotblue;
  const bool sound = area(disc({0.0, 0.0}, 22.0)) > 1520.0;
  std::cout << kVersion << ": a bore of "
            << format_length(parse_length("44", LengthUnit::mm), LengthUnit::mm, 3) << " mm\n";
  return sound ? 0 : 1;
}
