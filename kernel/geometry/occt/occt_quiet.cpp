#include "geometry/occt/occt_quiet.hpp"

namespace spotblue {
namespace {

std::mutex& step_lock() {
  static std::mutex lock;
  return lock;
}

}  // namespace

OcctQuiet::OcctQuiet() : lock_(step_lock()) {}

OcctQuiet::~OcctQuiet() {
  while (!settings_.empty()) {
    settings_.pop_back();  // the last first: one that was set twice gets its first value back
  }
}

void OcctQuiet::set(const std::string& name, const std::string& value) {
  settings_.emplace_back(name, value);
}

}  // namespace spotblue
