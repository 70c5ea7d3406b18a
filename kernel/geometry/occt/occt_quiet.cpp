#include "geometry/occt/occt_quiet.hpp"

#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Printer.hxx>

#include "spotblue/base/error.hpp"

namespace spotblue {
namespace {

std::mutex& step_lock() {
  static std::mutex lock;
  return lock;
}

}  // namespace

OcctQuiet::OcctQuiet()
    : lock_(step_lock()), printers_(Message::DefaultMessenger()->ChangePrinters()) {
  Message::DefaultMessenger()->ChangePrinters().Clear();
}

OcctQuiet::~OcctQuiet() {
  for (auto entry = before_.rbegin(); entry != before_.rend(); ++entry) {
    Interface_Static::SetCVal(entry->first.c_str(), entry->second.c_str());
  }
  Message::DefaultMessenger()->ChangePrinters() = printers_;
}

void OcctQuiet::set(const std::string& name, const std::string& value) {
  const char* old = Interface_Static::CVal(name.c_str());
  before_.emplace_back(name, old == nullptr ? "" : old);
  if (!Interface_Static::SetCVal(name.c_str(), value.c_str())) {
    before_.pop_back();
    throw Error(ErrorCode::open_cascade_failed, {"", name},
                "Open CASCADE refuses the setting \"" + value + "\"",
                "check the version of Open CASCADE");
  }
}

}  // namespace spotblue
