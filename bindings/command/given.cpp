#include "command/given.hpp"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <charconv>
#include <cmath>

#include "spotblue/base/error.hpp"
#include "spotblue/base/nearest.hpp"

namespace spotblue::command {
namespace {

[[noreturn]] void misused(const Verb& verb, const std::string& what) {
  throw Error(ErrorCode::bad_input, {}, fmt::format("{} {}", verb.name, what),
              fmt::format("spotblue {} --help shows how", verb.name));
}

std::string wrong_number(const std::string& text, Takes takes) {
  constexpr double kMostWhole = 10'000;
  double value = 0;
  const char* const end = text.data() + text.size();
  const auto [read, failed] = std::from_chars(text.data(), end, value);
  const bool fits = failed == std::errc() && read == end && std::isfinite(value) && value >= 0;
  switch (takes) {
    case Takes::count:
      return fits && value >= 1 && value <= kMostWhole && value == std::floor(value)
                 ? ""
                 : fmt::format("takes a whole number from 1 to {} in place of '{}'", kMostWhole,
                               text);
    case Takes::positive:
      return fits && value > 0
                 ? ""
                 : fmt::format("takes a number of more than 0 in place of '{}'", text);
    default:
      return fits ? "" : fmt::format("takes a number, 0 or more, in place of '{}'", text);
  }
}

std::string wrong_unit(const std::string& text) {
  if (std::find(std::begin(kUnitWords), std::end(kUnitWords), text) != std::end(kUnitWords)) {
    return {};
  }
  return fmt::format("takes mm or in, not '{}'", text);
}

std::string wrong_value(const Option& option, const std::string& text) {
  switch (option.takes) {
    case Takes::unit:
      return wrong_unit(text);
    case Takes::number:
    case Takes::positive:
    case Takes::count:
      return wrong_number(text, option.takes);
    case Takes::path:
      return text.empty() ? "takes the name of a file, not an empty one" : "";
    default:
      return {};
  }
}

std::string nearest_option(const Verb& verb, const std::string& word) {
  std::vector<std::string> known{"--help"};
  for (const Option& option : verb.options) {
    known.emplace_back(option.name);
  }
  return nearest_word(word.substr(0, word.find('=')), known);
}

// The first word that the parser had no place for.
[[noreturn]] void refuse_extra(const Verb& verb, const std::vector<std::string>& extra) {
  for (const std::string& word : extra) {
    if (word.size() > 1 && word.front() == '-') {
      misused(verb, fmt::format("has no option '{}', did you mean {}?", word,
                                nearest_option(verb, word)));
    }
  }
  misused(verb, fmt::format("has no place for '{}'", extra.empty() ? "" : extra.front()));
}

// The parser's "--unit: At Most 1 required but received 2" and "--unit: 1 required TEXT missing".
std::string in_our_words(std::string_view what) {
  const std::string_view option = what.substr(0, what.find(':'));
  return what.find("received") != std::string_view::npos
             ? fmt::format("takes {} only once", option)
             : fmt::format("{} lacks what it takes", option);
}

void require_operands(const Given& given) {
  const Verb& verb = *given.verb;
  if (given.operands.size() < verb.least_operands) {
    misused(verb, fmt::format("needs {}", verb.uses.front().operands));
  }
  if (given.operands.size() > verb.most_operands) {
    misused(verb, fmt::format("has no place for '{}'", given.operands[verb.most_operands]));
  }
}

}  // namespace

Given read_words(const Verb& verb, const std::vector<std::string>& words) {
  CLI::App app;
  app.set_help_flag("--help");
  Given given;
  app.add_option("words", given.operands);
  for (const Option& option : verb.options) {
    const auto keep = [&given, name = option.name](const std::string& text) {
      given.options[name] = text;
    };
    if (option.takes == Takes::nothing) {
      app.add_flag_callback(option.name, [keep] { keep({}); })->disable_flag_override();
    } else {
      app.add_option_function<std::string>(option.name, keep)
          ->check([&option](const std::string& text) { return wrong_value(option, text); });
    }
  }
  try {
    // The parser takes them from the end.
    app.parse(std::vector<std::string>(words.rbegin(), words.rend()));
  } catch (const CLI::CallForHelp&) {
    return given;
  } catch (const CLI::ExtrasError&) {
    refuse_extra(verb, app.remaining());
  } catch (const CLI::ArgumentMismatch& wrong) {
    misused(verb, in_our_words(wrong.what()));
  } catch (const CLI::ParseError& wrong) {
    misused(verb, wrong.what());
  }
  given.verb = &verb;
  require_operands(given);
  return given;
}

}  // namespace spotblue::command
