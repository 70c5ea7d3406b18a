#include "report/value_tree.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <variant>

#include "report/example_look.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/report/json.hpp"

namespace spotblue::test::value_tree_test {

nlohmann::ordered_json read_back(const Value& value);

struct ReadBack {
  template <typename Plain>
  nlohmann::ordered_json operator()(const Plain& value) const {
    return value;
  }
  nlohmann::ordered_json operator()(const Value::List& list) const {
    auto all = nlohmann::ordered_json::array();
    for (const Value& one : list) {
      all.push_back(read_back(one));
    }
    return all;
  }
  nlohmann::ordered_json operator()(const Value::Object& object) const {
    auto all = nlohmann::ordered_json::object();
    for (const Member& one : object) {
      all[one.key] = read_back(one.value);
    }
    return all;
  }
};

nlohmann::ordered_json read_back(const Value& value) { return std::visit(ReadBack(), value.held); }

TEST(ValueTree, IsWhatTheTextOfTheSameLookReadsBackTo) {
  const Look look = example_look();
  EXPECT_EQ(read_back(look_values(look)).dump(),
            nlohmann::ordered_json::parse(look_json(look)).dump());
}

TEST(ValueTree, FindingsAreThoseOfTheText) {
  const CheckResult result = example_check();
  const auto text = nlohmann::ordered_json::parse(check_json(result))["findings"];
  ASSERT_GE(text.size(), 3U);
  EXPECT_EQ(read_back({finding_values(result.findings)}).dump(), text.dump());
}

TEST(ValueTree, WholeNumbersAreThoseThatJsonHasWithoutAPoint) {
  ValueTree out;
  out.open_array();
  for (const double value : {5.0, -0.0, 0.5, 1e22, 3e9}) {
    out.number(value);
  }
  out.close_array();
  const Value all = out.take();
  const auto& list = std::get<Value::List>(all.held);
  EXPECT_EQ(std::get<std::int64_t>(list.at(0).held), 5);
  EXPECT_EQ(std::get<std::int64_t>(list.at(1).held), 0);
  EXPECT_EQ(std::get<double>(list.at(2).held), 0.5);
  EXPECT_EQ(std::get<double>(list.at(3).held), 1e22);
  EXPECT_EQ(std::get<double>(list.at(4).held), 3e9);
}

TEST(ValueTree, ByteThatIsNoUtf8BecomesTheReplacementLetter) {
  ValueTree out;
  out.text("f\xFCr \xE6\xAD\xAF");
  EXPECT_EQ(std::get<std::string>(out.take().held), "f\xEF\xBF\xBDr \xE6\xAD\xAF");
}

TEST(ValueTree, NumberThatIsNotFiniteIsRefused) {
  ValueTree out;
  EXPECT_THROW(out.number(std::nan("")), Error);
}

}  // namespace spotblue::test::value_tree_test
