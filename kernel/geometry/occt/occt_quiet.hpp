#pragma once
// Open CASCADE's STEP code prints on stdout and keeps process-wide settings: one at a time, in
// silence, and everything put back afterwards.

#include <list>
#include <mutex>
#include <string>

#include "geometry/occt/occt_silence.hpp"

namespace spotblue {

/// While it lives: the process-wide lock of STEP reading and writing is held and Open CASCADE's
/// printers are off.
class OcctQuiet {
 public:
  OcctQuiet();
  ~OcctQuiet();
  OcctQuiet(const OcctQuiet&) = delete;
  OcctQuiet& operator=(const OcctQuiet&) = delete;

  /// As OcctSetting, until the end of this object's life.
  void set(const std::string& name, const std::string& value);

 private:
  std::unique_lock<std::mutex> lock_;
  OcctSilence silence_;
  std::list<OcctSetting> settings_;
};

}  // namespace spotblue
