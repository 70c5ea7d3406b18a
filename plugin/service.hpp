#pragma once
/// @file
/// spotblue for any program that holds shapes or XDE documents of Open CASCADE: a service that it
/// loads while it runs. This header is all it takes; nothing of spotblue is linked.
///
///     const Handle(spotblue::host::Service) service = spotblue::host::load_service();
///     if (service.IsNull()) ...  // spotblue is not there, or is another interface than this
///
/// Open CASCADE finds the library through the file `Plugin` in the folder that the environment's
/// CSF_PluginUserDefaults names, <prefix>/share/spotblue; the loader must find the library itself,
/// in <prefix>/lib (LD_LIBRARY_PATH where that is no folder of the system's).
///
/// What stays: the GUID, load_service(), and that interface_version() comes first. Everything else
/// here may change with kInterface, so build the host against the header of the version it loads.
/// JSON is of schema 2, as the program's. Compiler and Open CASCADE are those of the host.
///
/// Lengths are mm. No function throws; `trouble` says in one line what went wrong and the cure, and
/// then nothing else is filled. Shapes are trusted and never changed: what crashes Open CASCADE
/// crashes the host. Not thread-safe.

#include <Plugin.hxx>
#include <Standard_Failure.hxx>
#include <Standard_GUID.hxx>
#include <Standard_Transient.hxx>
#include <Standard_Type.hxx>
#include <TDocStd_Document.hxx>
#include <TopoDS_Shape.hxx>
#include <string>
#include <vector>

namespace spotblue::host {

inline constexpr int kInterface = 2;
inline constexpr const char* kServiceGuid = "d2f3071a-62d8-431a-9755-7ac442e5dfdb";

/// A part by the name its host knows it by, where it lies in the assembly.
struct Part {
  std::string name;
  TopoDS_Shape shape;
};

/// What a look may take, 10^6 bytes of memory; 0: 120 s and 6,000, as the program. Where that ends
/// it, `not_looked_at` says what it did not reach; a check may take a quarter more.
struct Bounds {
  double seconds = 0.0;
  double memory_mb = 0.0;
};

/// Features by the ids of JSON and job files, "Wheel: bore", and the occurrences they are
/// of.
struct Seat {
  std::string kind;         ///< "radial", "axial", "taper", "width", "thread"
  std::string hole, shaft;  ///< or the two faces, slot and key, tapped hole and screw
  std::string hole_occurrence, shaft_occurrence;
  double clearance_mm = 0.0;  ///< negative is interference; of faces and cones the gap
};

struct Foul {
  std::string a, b;  ///< occurrences
  double volume_mm3 = 0.0;
  double depth_mm = 0.0;
};

/// A number, or words where `text` is filled; the key ends in the unit.
struct Value {
  std::string key;
  double number = 0.0;
  std::string text;
};

struct Verdict {
  std::string id, kind;            ///< "radial-1", "radial fit"
  std::string outcome;             ///< "conforming", "nonconforming", "undecided"
  std::vector<std::string> about;  ///< features or occurrences, hole before shaft
  std::vector<Value> wanted, found, margin;
  std::string basis, advice, caution;  ///< each may be empty
};

struct LookResult {
  std::string trouble;  ///< empty when it was done
  std::size_t parts = 0, occurrences = 0;
  std::vector<Seat> seats;
  std::vector<Foul> fouls;
  std::vector<std::string> notes;          ///< what could not be seen, and why
  std::vector<std::string> not_looked_at;  ///< for want of time or memory: it may seat or foul
  std::string json;                        ///< all of it, as `spotblue look --json` writes it
};

struct CheckResult {
  std::string trouble;  ///< empty when it was done
  int conforming = 0, nonconforming = 0, undecided = 0;
  std::vector<Verdict> findings;
  std::size_t notes_kept = 0;  ///< in the document
  std::size_t marks_set = 0;   ///< features and parts coloured in the document
  std::string json;            ///< all of it, as `spotblue check --json` writes it
};

struct CheckWishes {
  std::string job_file;  ///< its model is what is given here; empty: the sizes in the document
  /// Findings into the document: named data, and notes on the faces and parts of those that do not
  /// conform, in place of those of an earlier check. Open a command of the document to be able to
  /// undo it.
  bool keep = false;
  bool mark = false;  ///< colours for the faces of what was judged, in place of earlier ones
  Bounds bounds{};
};

class Service : public Standard_Transient {
 public:
  /// kInterface of the library.
  [[nodiscard]] virtual int interface_version() const noexcept = 0;
  /// Of spotblue, as `spotblue --version` tells it.
  [[nodiscard]] virtual std::string version() const = 0;

  [[nodiscard]] virtual LookResult look_at_document(const Handle(TDocStd_Document) & document,
                                                    const Bounds& bounds = {}) = 0;
  [[nodiscard]] virtual LookResult look_at_shapes(const std::vector<Part>& parts,
                                                  const Bounds& bounds = {}) = 0;
  [[nodiscard]] virtual CheckResult check_document(const Handle(TDocStd_Document) & document,
                                                   const CheckWishes& wishes) = 0;
  /// @param job_file  must be named: shapes state no sizes.
  [[nodiscard]] virtual CheckResult check_shapes(const std::vector<Part>& parts,
                                                 const std::string& job_file,
                                                 const Bounds& bounds = {}) = 0;

  /// The findings that a document holds, as JSON's "findings"; "[]" when it holds none.
  /// @param trouble  empty when it was done.
  [[nodiscard]] virtual std::string kept_findings(const Handle(TDocStd_Document) & document,
                                                  std::string& trouble) = 0;
  /// Gives the faces of a document the colours back that they had, unless coloured anew since.
  /// @param trouble  empty when it was done.
  virtual std::size_t clear_marks(const Handle(TDocStd_Document) & document,
                                  std::string& trouble) = 0;

  DEFINE_STANDARD_RTTI_INLINE(Service, Standard_Transient)
};

/// The service, or null when it can not be loaded or its interface is not this header's.
[[nodiscard]] inline Handle(Service) load_service() {
  try {
    Handle(Service) service =
        Handle(Service)::DownCast(Plugin::Load(Standard_GUID(kServiceGuid), Standard_False));
    const bool usable = !service.IsNull() && service->interface_version() == kInterface;
    return usable ? service : Handle(Service)();
  } catch (const Standard_Failure&) {  // the library or the file `Plugin` is not found
    return {};
  }
}

}  // namespace spotblue::host
