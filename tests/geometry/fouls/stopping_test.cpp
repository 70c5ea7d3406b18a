// Work that its starter asks to stop ends with an error that says so, wherever it is.
#include <gmock/gmock.h>

#include <chrono>
#include <functional>
#include <thread>

#include "geometry/fouls/exact_overlap.hpp"
#include "geometry/fouls/foul_solids.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/stop.hpp"
#include "spotblue/geometry/foul.hpp"
#include "spotblue/geometry/seats.hpp"
#include "spotblue/geometry/way_in.hpp"
#include "support/thrown.hpp"
#include "support/value_parts.hpp"

namespace spotblue::stopping_test {

Model two_bars() {
  return test::solid_model(
      {{test::bar_solid(0, 10, 0, 20), {}}, {test::bar_solid(0, 8, 15, 30), {}}});
}

TEST(Stopping, EveryStageOfALookHearsIt) {
  const Model model = two_bars();
  const Seats seats = find_seats(model, {});
  const std::atomic<bool> asked{true};
  const StopWhen stop(asked);
  for (const std::function<void()>& stage : std::vector<std::function<void()>>{
           [&] { (void)find_seats(model, {}); },
           [&] { (void)find_fouls(model, seats, {}, {}); },
           [&] { (void)ways_in(model, seats, {}); },
       }) {
    EXPECT_EQ(test::error_of(stage).code(), ErrorCode::stopped);
  }
}

// Once taken for one more pair on which Open CASCADE had failed.
TEST(Stopping, TheComparisonOfSolidsDoesNotTakeItForAFailedPair) {
  const Model model = two_bars();
  proof::OpenPair pair;
  pair.product_b = ProductId(1);
  const std::vector<proof::OpenPair> pairs(200, pair);
  std::atomic<bool> asked{false};
  std::thread asking([&] {
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
    asked = true;
  });
  const StopWhen stop(asked);
  const Error error =
      test::error_of([&] { return proof::exact_overlaps(model.shapes.get(), pairs, {}); });
  asking.join();
  EXPECT_EQ(error.code(), ErrorCode::stopped);
  EXPECT_EQ(error.rule(), "stopped before it was done");
}

}  // namespace spotblue::stopping_test
