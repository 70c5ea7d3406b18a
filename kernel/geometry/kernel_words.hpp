#pragma once
// What Open CASCADE would print while it works.

#include <Message_Messenger.hxx>
#include <Message_SequenceOfPrinters.hxx>
#include <memory>
#include <string>
#include <vector>

namespace spotblue {

// Hears a messenger, in place of its printers, for as long as this lives.
class KernelWords {
 public:
  explicit KernelWords(Handle(Message_Messenger) messenger);
  ~KernelWords();
  KernelWords(const KernelWords&) = delete;
  KernelWords& operator=(const KernelWords&) = delete;
  KernelWords(KernelWords&&) = delete;
  KernelWords& operator=(KernelWords&&) = delete;

  // One line each, empty when there was none: the first failure, and the first warnings together.
  [[nodiscard]] std::string failure() const;
  [[nodiscard]] std::string warnings() const;

 private:
  struct Heard {
    std::vector<std::string> warnings;
    std::string failure;
  };
  class Listener;

  Handle(Message_Messenger) messenger_;
  Message_SequenceOfPrinters before_;
  std::shared_ptr<Heard> heard_;
};

}  // namespace spotblue
