#pragma once
// All that differs between the versions of Open CASCADE, 7.6 to 8.0, in one place: no other source
// asks for the version. Which toolkits there are: occt_toolkits.cmake.
//
// Built and tested with 7.6.3; compiled with 7.8.1 on Debian 13 and against the headers of 7.9.2.
// What is for 7.7 or 8.0 alone has never been compiled here.

#include <STEPConstruct_UnitContext.hxx>
#include <STEPControl_Reader.hxx>
#include <Standard_Failure.hxx>
#include <Standard_Type.hxx>
#include <Standard_Version.hxx>
#include <StepData_StepModel.hxx>
#include <XSControl_WorkSession.hxx>
#include <string>

#if OCC_VERSION_HEX < 0x070900
#include <TopoDS_Shape.hxx>
#include <XSAlgo.hxx>
#include <XSAlgo_AlgoContainer.hxx>
#endif
#if OCC_VERSION_HEX >= 0x070800
#include <StepData_Factors.hxx>
#endif

namespace spotblue::occt {

// "Standard_DomainError". From 8.0 a failure is a std::exception without a type of Open CASCADE's.
inline const char* kind_of(const Standard_Failure& failure) {
#if OCC_VERSION_HEX >= 0x080000
  return failure.ExceptionType();
#else
  return failure.DynamicType()->Name();
#endif
}

// Empty where it gives none.
inline std::string words_of(const Standard_Failure& failure) {
#if OCC_VERSION_HEX >= 0x080000
  const char* const words = failure.what();
#else
  const char* const words = failure.GetMessageString();
#endif
  return words == nullptr ? "" : words;
}

// `unit` is a unit or a context of units; 0 when it is understood. The factors are to mm.
template <typename Unit>
int compute_factors(STEPConstruct_UnitContext& context, const Unit& unit) {
#if OCC_VERSION_HEX >= 0x070800
  return context.ComputeFactors(unit, StepData_Factors());
#else
  return context.ComputeFactors(unit);
#endif
}

// What the session's writer scales lengths to: mm in the unit that `write.step.unit` names, before
// the transfer. 7.8 takes only the name from there and leaves the numbers in mm.
inline void write_lengths_in(const Handle(XSControl_WorkSession) & session, double unit_mm) {
#if OCC_VERSION_HEX >= 0x070800
  Handle(StepData_StepModel)::DownCast(session->Model())->SetWriteLengthUnit(unit_mm);
#else
  (void)session;  // the name is enough
  (void)unit_mm;
#endif
}

#if OCC_VERSION_HEX < 0x070900
// Stands where Open CASCADE looks for what to do with every shape it has made, and does nothing.
class Unhealed : public XSAlgo_AlgoContainer {
 public:
  TopoDS_Shape ProcessShape(const TopoDS_Shape& shape, Standard_Real /*precision*/,
                            Standard_Real /*tolerance*/, Standard_CString /*resource*/,
                            Standard_CString /*sequence*/, Handle(Standard_Transient) & /*info*/,
                            const Message_ProgressRange& /*progress*/,
                            Standard_Boolean /*non_manifold*/
#if OCC_VERSION_HEX >= 0x070800
                            ,
                            TopAbs_ShapeEnum /*detail*/
#endif
  ) const override {
    return shape;
  }
#if OCC_VERSION_HEX >= 0x070800
  TopoDS_Shape ProcessShape(const TopoDS_Shape& shape, Standard_Real /*precision*/,
                            Standard_Real /*tolerance*/, Standard_CString /*resource*/,
                            Standard_CString /*sequence*/, Handle(Standard_Transient) & /*info*/,
                            const Handle(ShapeBuild_ReShape) & /*changes*/,
                            const Message_ProgressRange& /*progress*/,
                            Standard_Boolean /*non_manifold*/,
                            TopAbs_ShapeEnum /*detail*/) const override {
    return shape;
  }
#endif
};
#endif

// For the transfers to come, of this reader and, before 7.9, of the whole process: shape healing is
// three quarters of a transfer, and measuring needs none of it.
inline void leave_unhealed(STEPControl_Reader& reader) {
#if OCC_VERSION_HEX >= 0x070900
  reader.SetShapeProcessFlags({});
#else
  (void)reader;
  XSAlgo::SetAlgoContainer(new Unhealed);
#endif
}

}  // namespace spotblue::occt
