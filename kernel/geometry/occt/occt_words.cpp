#include "geometry/occt/occt_words.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <Message_Printer.hxx>
#include <TCollection_AsciiString.hxx>
#include <algorithm>
#include <utility>

#include "geometry/part21/step_name.hpp"

namespace spotblue {

class OcctWords::Listener : public Message_Printer {
 public:
  explicit Listener(std::shared_ptr<Heard> heard) : heard_(std::move(heard)) {}

 protected:
  void send(const TCollection_AsciiString& text, const Message_Gravity gravity) const override {
    const std::string words = clean_name(text.ToCString());
    if (gravity >= Message_Alarm) {
      heard_->failure = heard_->failure.empty() ? words : heard_->failure;
    } else if (gravity == Message_Warning) {
      heard_->warnings.push_back(words);
    }
  }

 private:
  std::shared_ptr<Heard> heard_;
};

OcctWords::OcctWords(const Handle(Message_Messenger) & messenger)
    : silence_(messenger), heard_(std::make_shared<Heard>()) {
  messenger->AddPrinter(new Listener(heard_));
}

std::string OcctWords::failure() const { return heard_->failure; }

std::string OcctWords::warnings() const {
  constexpr std::size_t kShown = 6;
  const auto& all = heard_->warnings;
  const auto end = all.begin() + static_cast<std::ptrdiff_t>(std::min(kShown, all.size()));
  return fmt::format("{}{}", fmt::join(all.begin(), end, " "),
                     all.size() > kShown ? fmt::format(" and {} more", all.size() - kShown) : "");
}

}  // namespace spotblue
