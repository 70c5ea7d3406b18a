#pragma once
// Open CASCADE's STEP reader set up for measuring: healing off, mm, no messages.

#include <Interface_Graph.hxx>
#include <STEPControl_Reader.hxx>
#include <StepData_StepModel.hxx>
#include <TopoDS_Shape.hxx>
#include <Transfer_TransientProcess.hxx>
#include <XSControl_WorkSession.hxx>
#include <string_view>
#include <vector>

#include "spotblue/geometry/model.hpp"
#include "spotblue/geometry/settings.hpp"

namespace spotblue {

// One parsed and transferred file; entities and the shapes made of them.
class StepReader {
 public:
  // Throws Error unreadable when Open CASCADE refuses the text, or, unless a partial model is
  // accepted, when it could not read an entity that shapes are made of; nothing is made of any
  // then.
  StepReader(std::string_view text, Completeness completeness);

  // See entity_faults.
  [[nodiscard]] const std::vector<Note>& faults() const { return faults_; }

  [[nodiscard]] const Handle(StepData_StepModel) & entities() const { return entities_; }
  // The shape made of an entity; null when none was.
  [[nodiscard]] TopoDS_Shape shape_of(const Handle(Standard_Transient) & entity) const;
  // Which entities refer to which.
  [[nodiscard]] const Interface_Graph& graph() const { return reader_.WS()->Graph(); }
  // 12 for #12.
  [[nodiscard]] int number_of(const Handle(Standard_Transient) & entity) const;

 private:
  STEPControl_Reader reader_;
  Handle(StepData_StepModel) entities_;
  Handle(Transfer_TransientProcess) process_;
  std::vector<Note> faults_;
};

}  // namespace spotblue
