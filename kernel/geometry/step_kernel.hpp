#pragma once
// The kernel's STEP reader set up for measuring: healing off, mm, no messages.

#include <Interface_Graph.hxx>
#include <STEPControl_Reader.hxx>
#include <StepData_StepModel.hxx>
#include <TopoDS_Shape.hxx>
#include <Transfer_TransientProcess.hxx>
#include <XSControl_WorkSession.hxx>
#include <string_view>

namespace spotblue {

// One parsed and transferred file; entities and the shapes made of them.
class StepKernel {
 public:
  // Throws Error unreadable when the kernel refuses the text.
  explicit StepKernel(std::string_view text);

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
};

}  // namespace spotblue
