#pragma once
// Open CASCADE's printers and process-wide settings for a while. Here whole, for the plug-in too.

#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <Message_Printer.hxx>
#include <Message_SequenceOfPrinters.hxx>
#include <string>
#include <utility>

#include "spotblue/base/error.hpp"

namespace spotblue {

/// While it lives, the messenger prints nothing: Open CASCADE's STEP code prints on stdout.
class OcctSilence {
 public:
  explicit OcctSilence(Handle(Message_Messenger) messenger = Message::DefaultMessenger())
      : messenger_(std::move(messenger)), printers_(messenger_->ChangePrinters()) {
    messenger_->ChangePrinters().Clear();
  }
  ~OcctSilence() { messenger_->ChangePrinters() = printers_; }
  OcctSilence(const OcctSilence&) = delete;
  OcctSilence& operator=(const OcctSilence&) = delete;
  OcctSilence(OcctSilence&&) = delete;
  OcctSilence& operator=(OcctSilence&&) = delete;

 private:
  Handle(Message_Messenger) messenger_;
  Message_SequenceOfPrinters printers_;
};

/// One of Open CASCADE's static parameters while this lives.
class OcctSetting {
 public:
  /// @throws Error open_cascade_failed when Open CASCADE refuses it.
  OcctSetting(std::string name, const std::string& value) : name_(std::move(name)) {
    const char* const before = Interface_Static::CVal(name_.c_str());
    before_ = before == nullptr ? "" : before;
    if (!Interface_Static::SetCVal(name_.c_str(), value.c_str())) {
      throw Error(ErrorCode::open_cascade_failed, {"", name_},
                  "Open CASCADE refuses the setting \"" + value + "\"",
                  "check the version of Open CASCADE");
    }
  }
  ~OcctSetting() { Interface_Static::SetCVal(name_.c_str(), before_.c_str()); }
  OcctSetting(const OcctSetting&) = delete;
  OcctSetting& operator=(const OcctSetting&) = delete;
  OcctSetting(OcctSetting&&) = delete;
  OcctSetting& operator=(OcctSetting&&) = delete;

 private:
  std::string name_;
  std::string before_;
};

}  // namespace spotblue
