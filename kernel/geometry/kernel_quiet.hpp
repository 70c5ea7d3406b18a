#pragma once
// The kernel's STEP code prints on stdout and keeps process-wide settings: one at a time, in
// silence, and everything put back afterwards.

#include <Message_Messenger.hxx>
#include <Message_SequenceOfPrinters.hxx>
#include <mutex>
#include <string>
#include <utility>
#include <vector>

namespace spotblue {

/// While it lives: the process-wide lock of STEP reading and writing is held and the kernel's
/// printers are off.
class KernelQuiet {
 public:
  KernelQuiet();
  ~KernelQuiet();
  KernelQuiet(const KernelQuiet&) = delete;
  KernelQuiet& operator=(const KernelQuiet&) = delete;

  /// Sets one of the kernel's static parameters until the end of this object's life.
  void set(const std::string& name, const std::string& value);

 private:
  std::unique_lock<std::mutex> lock_;
  Message_SequenceOfPrinters printers_;
  std::vector<std::pair<std::string, std::string>> before_;
};

}  // namespace spotblue
