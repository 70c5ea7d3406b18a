#include "geometry/read/model_archive.hpp"

#include <gtest/gtest.h>
#include <sys/resource.h>

#include <cstring>

#include "spotblue/base/error.hpp"

namespace spotblue::model_archive_test {

Arrival small_arrival() {
  Arrival arrival;
  Product product;
  product.id = product.name = "Bush";
  product.cylinders.resize(2);
  product.planes.resize(2);
  product.widths = {{"width 8", Side::external, 0, 1, 8.0}};
  arrival.model.products = {product};
  arrival.products = {{12}};
  arrival.model.occurrences = {{"Stand/Bush", "Stand/Bush", ProductId(0), Frame{}, true, Box{}}};
  arrival.solids = {{13, 4, true}};
  arrival.elsewhere = {{16, "Stand/Bush", Frame{}}};
  return arrival;
}

// Nothing for bytes that are refused.
std::optional<Arrival> taken(const std::string& bytes) {
  try {
    return arrival_from_bytes(bytes);
  } catch (const Error& error) {
    EXPECT_EQ(error.code(), ErrorCode::open_cascade_failed);
    return std::nullopt;
  }
}

long most_kb() {
  rusage used{};
  getrusage(RUSAGE_SELF, &used);
  return used.ru_maxrss;
}

TEST(ModelArchive, WhatIsHandedOverArrives) {
  const Arrival arrival = arrival_from_bytes(to_bytes(small_arrival()));
  ASSERT_EQ(arrival.model.products.size(), 1U);
  EXPECT_EQ(arrival.model.products[0].id, "Bush");
  EXPECT_EQ(arrival.model.products[0].widths[0].second, 1U);
  EXPECT_TRUE(arrival.model.occurrences[0].mirrored);
  EXPECT_EQ(arrival.elsewhere[0].path, "Stand/Bush");
}

TEST(ModelArchive, FilesThatTheParentKnowsAreNotTakenFromTheChild) {
  Arrival arrival = small_arrival();
  arrival.model.file.files = {"stand.step"};
  EXPECT_FALSE(taken(to_bytes(arrival)));
}

TEST(ModelArchive, BytesThatAreCutOffAnywhereAreRefused) {
  const std::string sound = to_bytes(small_arrival());
  for (std::size_t length = 0; length < sound.size(); ++length) {
    EXPECT_FALSE(taken(sound.substr(0, length))) << length;
  }
  EXPECT_FALSE(taken(sound + "more"));
}

// A count in bytes that a crash has spoilt asked for its items at once: four million products.
TEST(ModelArchive, ACountOfMoreThanThereIsTakesNoMemory) {
  const std::string sound = to_bytes(small_arrival());
  const long before = most_kb();
  for (std::size_t at = 0; at + 8 <= sound.size(); ++at) {
    std::string bytes = sound;
    const std::uint64_t count = std::uint64_t{1} << 22U;
    std::memcpy(bytes.data() + at, &count, sizeof count);
    if (const auto arrival = taken(bytes)) {
      EXPECT_EQ(to_bytes(*arrival), bytes) << at;
    }
  }
  EXPECT_LT(most_kb() - before, 100'000);
}

TEST(ModelArchive, AByteThatIsNoTruthIsRefusedOrSomethingElse) {
  const std::string sound = to_bytes(small_arrival());
  for (std::size_t at = 0; at < sound.size(); ++at) {
    std::string bytes = sound;
    bytes[at] = 2;
    if (const auto arrival = taken(bytes)) {
      EXPECT_EQ(to_bytes(*arrival), bytes) << at;
    }
  }
}

}  // namespace spotblue::model_archive_test
