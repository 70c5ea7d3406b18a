#pragma once
// What Open CASCADE would print while it works.

#include <Message_Messenger.hxx>
#include <memory>
#include <string>
#include <vector>

#include "geometry/occt/occt_silence.hpp"

namespace spotblue {

// Hears a messenger, in place of its printers, for as long as this lives.
class OcctWords {
 public:
  explicit OcctWords(const Handle(Message_Messenger) & messenger);
  ~OcctWords() = default;
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

  OcctSilence silence_;
  std::shared_ptr<Heard> heard_;
};

}  // namespace spotblue
