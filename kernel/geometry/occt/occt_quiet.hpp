#pragma once
// Open CASCADE's STEP code prints on stdout and keeps process-wide settings: one at a time, in
// silence, and everything put back afterwards.

#include <Message_Messenger.hxx>
#include <Message_SequenceOfPrinters.hxx>
#include <mutex>
#include <string>
#include <utility>
#include <vector>

namespace spotblue {

/// While it lives: the process-wide lock of STEP reading and writing is held and Open CASCADE's
/// printers are off.
class OcctQuiet {
 public:
  OcctQuiet();
  ~OcctQuiet();
  OcctQuiet(const OcctQuiet&) = delete;
  OcctQuiet& operator=(const OcctQuiet&) = delete;

  /// Sets one of Open CASCADE's static parameters until the end of this object's life.
  void set(const std::string& name, const std::string& value);

 private:
  std::unique_lock<std::mutex> lock_;
  Message_SequenceOfPrinters printers_;
  std::vector<std::pair<std::string, std::string>> before_;
};

}  // namespace spotblue
