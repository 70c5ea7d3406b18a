#include "spotblue/standards/clearance_holes.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/require.hpp"

namespace spotblue {
namespace {

constexpr double kSameSize_mm = 0.001;

constexpr Length mm(double value) { return Length::mm(value); }

// ISO 273:1979: thread, fine, medium, coarse; each row seen in at least one reprint.
// clang-format off
constexpr std::array<ClearanceHole, 35> kHoles = {{
    {mm(1), mm(1.1), mm(1.2), mm(1.3)}, {mm(1.2), mm(1.3), mm(1.4), mm(1.5)},
    {mm(1.4), mm(1.5), mm(1.6), mm(1.8)}, {mm(1.6), mm(1.7), mm(1.8), mm(2)},
    {mm(1.8), mm(2), mm(2.1), mm(2.2)}, {mm(2), mm(2.2), mm(2.4), mm(2.6)},
    {mm(2.5), mm(2.7), mm(2.9), mm(3.1)}, {mm(3), mm(3.2), mm(3.4), mm(3.6)},
    {mm(3.5), mm(3.7), mm(3.9), mm(4.2)}, {mm(4), mm(4.3), mm(4.5), mm(4.8)},
    {mm(4.5), mm(4.8), mm(5), mm(5.3)}, {mm(5), mm(5.3), mm(5.5), mm(5.8)},
    {mm(6), mm(6.4), mm(6.6), mm(7)}, {mm(7), mm(7.4), mm(7.6), mm(8)},
    {mm(8), mm(8.4), mm(9), mm(10)}, {mm(10), mm(10.5), mm(11), mm(12)},
    {mm(12), mm(13), mm(13.5), mm(14.5)}, {mm(14), mm(15), mm(15.5), mm(16.5)},
    {mm(16), mm(17), mm(17.5), mm(18.5)}, {mm(18), mm(19), mm(20), mm(21)},
    {mm(20), mm(21), mm(22), mm(24)}, {mm(22), mm(23), mm(24), mm(26)},
    {mm(24), mm(25), mm(26), mm(28)}, {mm(27), mm(28), mm(30), mm(32)},
    {mm(30), mm(31), mm(33), mm(35)}, {mm(33), mm(34), mm(36), mm(38)},
    {mm(36), mm(37), mm(39), mm(42)}, {mm(39), mm(40), mm(42), mm(45)},
    {mm(42), mm(43), mm(45), mm(48)}, {mm(45), mm(46), mm(48), mm(52)},
    {mm(48), mm(50), mm(52), mm(56)}, {mm(52), mm(54), mm(56), mm(62)},
    {mm(56), mm(58), mm(62), mm(66)}, {mm(60), mm(62), mm(66), mm(70)},
    {mm(64), mm(66), mm(70), mm(74)},
}};
// clang-format on

}  // namespace

std::span<const ClearanceHole> clearance_holes() { return kHoles; }

std::optional<ClearanceHole> clearance_hole(Length thread) {
  require_positive(thread.in_mm(), "thread_mm", "mm");
  const auto* const row =
      std::find_if(kHoles.begin(), kHoles.end(), [thread](const ClearanceHole& hole) {
        return std::abs((hole.thread - thread).in_mm()) <= kSameSize_mm;
      });
  return row == kHoles.end() ? std::nullopt : std::optional(*row);
}

}  // namespace spotblue
