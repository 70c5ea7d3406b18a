#pragma once
/// @file
/// Keeps the person at the keyboard out of the STEP files Open CASCADE writes.

#include <XSControl_WorkSession.hxx>

namespace spotblue {

/// For the next writes of this session an AP203 file names nobody. Left alone, Open CASCADE puts
/// the user's login name, the machine's name and its network address there; and where the machine's
/// name has no address it crashes.
void leave_author_out(const Handle(XSControl_WorkSession) & session);

}  // namespace spotblue
