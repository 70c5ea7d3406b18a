#pragma once
// The distance between two faces of one part: what it may be, and how that is known.

#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>

#include "group/match/declared.hpp"
#include "spotblue/mechanics/stack.hpp"
#include "spotblue/standards/general_tolerances.hpp"

namespace spotblue {

enum class LengthSource {
  measured,           ///< [[lengths]] or a gap taken with a feeler
  limits,             ///< [[lengths]] with limits
  as_found,           ///< the model of a part that exists and was measured
  general_tolerance,  ///< untoleranced: ISO 2768-1
  assumed,            ///< untoleranced where ISO 2768-1 gives nothing: its nearest step
  as_set,             ///< between two parts whose place is set when they are joined
  soft,               ///< of a soft part whose thickness and squeeze are not given: as modelled
  not_closed,         ///< as modelled: no chain of touching faces leads from the one to the other
};

struct KnownLength {
  Length nominal;  ///< measured, else modelled
  Limits limits;
  StackSpread spread = StackSpread::uniform;
  LengthSource source = LengthSource::as_found;
  Saying how;  ///< "measured (job file, line 12)", "ISO 2768-1 m"
};

class PartLengths {
 public:
  /// @throws Error bad_input naming job file and line for [[lengths]] that name no two faces of one
  ///         part, faces that are not parallel, or the same two as another entry.
  explicit PartLengths(const DeclaredJob& declared);

  /// Between two plane faces of one occurrence that are `modelled` apart, >= 0.
  [[nodiscard]] KnownLength between(const FeatureRef& a, const FeatureRef& b,
                                    Length modelled) const;
  /// Whether [[lengths]] has an entry for the two faces, and for any two of the part.
  [[nodiscard]] bool gives(const FeatureRef& a, const FeatureRef& b) const;
  [[nodiscard]] bool speaks_of(OccurrenceId occurrence) const;
  /// Of two parts joined where they happen to stand: the model's, as surely as anything is known.
  /// @param off  how far off it a part that is still to make may bring it.
  [[nodiscard]] KnownLength as_set(Length modelled, Limits off = {}) const;

 private:
  void add(const PartLength& length, const NamedFeature& a, const NamedFeature& b);
  [[nodiscard]] KnownLength untoleranced(Length modelled) const;
  /// Of a soft part; nothing of any other, and of a length that is none of its thickness.
  [[nodiscard]] std::optional<KnownLength> squeezed(OccurrenceId part, Length modelled) const;

  const DeclaredJob* declared_;
  GeneralTolerance untoleranced_;
  struct Entry {
    Meant meant = Meant::product;
    const PartLength* length = nullptr;
  };
  std::map<std::pair<Subject, Subject>, Entry> entries_;
  std::set<std::size_t> spoken_of_;
};

}  // namespace spotblue
