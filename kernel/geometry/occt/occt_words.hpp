#pragma once
// What Open CASCADE would print while it works.

#include <Message_Messenger.hxx>
#include <Message_SequenceOfPrinters.hxx>
#include <memory>
#include <string>
#include <vector>

namespace spotblue {

// Hears a messenger, in place of its printers, for as long as this lives.
class OcctWords {
 public:
  explicit OcctWords(Handle(Message_Messenger) messenger);
  ~OcctWords();
  OcctWords(const OcctWords&) = delete;
  OcctWords& operator=(const OcctWords&) = delete;
  OcctWords(OcctWords&&) = delete;
  OcctWords& operator=(OcctWords&&) = delete;

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
