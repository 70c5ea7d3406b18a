#include "geometry/write/step_author.hpp"

#include <STEPConstruct_AP203Context.hxx>
#include <STEPControl_ActorWrite.hxx>
#include <StepBasic_Organization.hxx>
#include <StepBasic_Person.hxx>
#include <StepBasic_PersonAndOrganization.hxx>
#include <TCollection_HAsciiString.hxx>
#include <XSControl_Controller.hxx>

namespace spotblue {
namespace {

// Open CASCADE's writer has a setter for the author but keeps the object that has it private.
// Naming a private member is allowed in an explicit instantiation, which hands the member's address
// out here.
STEPConstruct_ContextTool& context_of(STEPControl_ActorWrite& actor);

template <STEPConstruct_ContextTool STEPControl_ActorWrite::*member>
struct ContextDoor {
  friend STEPConstruct_ContextTool& context_of(STEPControl_ActorWrite& actor) {
    return actor.*member;
  }
};
template struct ContextDoor<&STEPControl_ActorWrite::myContext>;

Handle(TCollection_HAsciiString) text(const char* words) {
  return new TCollection_HAsciiString(words);
}

Handle(StepBasic_PersonAndOrganization) nobody() {
  // The standard wants an id and at least one name.
  const Handle(StepBasic_Person) person = new StepBasic_Person;
  person->Init(text("not given"), true, text("not given"), false, nullptr, false, nullptr, false,
               nullptr, false, nullptr);
  const Handle(StepBasic_Organization) organization = new StepBasic_Organization;
  organization->Init(false, nullptr, text("not given"), text(""));
  Handle(StepBasic_PersonAndOrganization) both = new StepBasic_PersonAndOrganization;
  both->Init(person, organization);
  return both;
}

}  // namespace

void leave_author_out(const Handle(XSControl_WorkSession) & session) {
  const auto actor = Handle(STEPControl_ActorWrite)::DownCast(session->NormAdaptor()->ActorWrite());
  if (!actor.IsNull()) {
    context_of(*actor).AP203Context().SetDefaultPersonAndOrganization(nobody());
  }
}

}  // namespace spotblue
