#pragma once
// From a name in the job file to the part or feature of the model that it means.

#include <cstddef>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "spotblue/base/error.hpp"
#include "spotblue/geometry/seats.hpp"
#include "spotblue/group/sentence.hpp"
#include "spotblue/job/job.hpp"

namespace spotblue {

/// Whether a name means all bodies of a part, a product wherever it occurs, or one occurrence; the
/// narrower one, which stands later here, wins.
enum class Meant { part, product, occurrence };

struct NamedPart {
  Meant meant = Meant::product;
  std::vector<OccurrenceId> occurrences;  ///< ascending
};

struct NamedFeature {
  Meant meant = Meant::product;
  std::vector<FeatureRef> refs;  ///< one an occurrence, ascending
};

/// Where a name stands in the job file.
struct Entry {
  std::string_view list;  ///< "fits"
  std::string_view key;   ///< "hole"
  std::optional<JobLine> line{};
};

struct ProductFeature {
  FeatureKind kind = FeatureKind::cylinder;
  std::size_t index = 0;
  const std::string* name = nullptr;
  const std::string* sized_name = nullptr;
  const std::vector<std::string>* given = nullptr;
};
[[nodiscard]] std::vector<ProductFeature> features_of(const Product& product);
[[nodiscard]] const std::string& feature_name(const Model& model, const FeatureRef& feature);
[[nodiscard]] const std::string& sized_feature_name(const Model& model, const FeatureRef& feature);

/// Every part and feature name of one model, as a job's file may write them.
class Names {
 public:
  Names(const Job& job, const Model& model);

  /// A product or occurrence by its id, all bodies of a part by the part's, or a body by what the
  /// file calls it where nothing else is called so.
  /// @throws Error bad_input naming file, entry and the nearest part.
  [[nodiscard]] NamedPart part(const std::string& name, const Entry& entry) const;
  /// Two parts that an entry sets against each other.
  /// @throws Error bad_input as part, and where both names mean one part that stands once.
  [[nodiscard]] std::pair<NamedPart, NamedPart> two_parts(const std::string& a,
                                                          const std::string& b,
                                                          const Entry& entry) const;
  /// A feature by its id or by what the file calls a face of it; or by kind and size ("bore 44",
  /// within 0.005 mm) where the part has one such; of a part with several bodies, the only one
  /// among them.
  /// @throws Error bad_input naming file, entry and the nearest feature, or all that match.
  [[nodiscard]] NamedFeature feature(const std::string& name, const Entry& entry) const;
  [[nodiscard]] bool is_part(const std::string& name) const;
  /// Whether a part of that name stands anywhere.
  [[nodiscard]] bool is_placed(const std::string& name) const;
  /// Whether a part that stands somewhere has such a feature, or several.
  [[nodiscard]] bool is_feature(const std::string& name) const;
  /// Why not all of the part may be known, by its first product of which that is so (flaws_of);
  /// empty where all is, and where there is no such part.
  [[nodiscard]] const std::string& flaw_of(const std::string& part) const;
  [[nodiscard]] const std::string& flaw_of(OccurrenceId occurrence) const;

  /// An Error bad_input at the entry.
  [[nodiscard]] Error error(const Entry& entry, const std::string& rule, std::string cure) const;

  /// For findings: the shortest id that means this occurrence or this feature of it alone.
  [[nodiscard]] const std::string& id_of(OccurrenceId occurrence) const;
  [[nodiscard]] std::string id_of(const FeatureRef& feature) const;
  [[nodiscard]] Reference reference(OccurrenceId occurrence) const {
    return {id_of(occurrence), occurrence};
  }
  [[nodiscard]] Reference reference(const FeatureRef& feature) const {
    return {id_of(feature), feature};
  }

 private:
  [[nodiscard]] const NamedPart* find_part(const std::string& name) const;
  void add_parts_of_bodies(const std::vector<std::vector<OccurrenceId>>& of_product);
  [[nodiscard]] std::set<ProductId> products_of(const NamedPart& part) const;
  [[nodiscard]] std::vector<ProductFeature> matches(const Product& product,
                                                    const std::string& name) const;
  [[nodiscard]] static std::string told(const ProductFeature& feature, std::string_view written);
  [[nodiscard]] Error unknown_feature(const std::string& name, const Entry& entry) const;

  const Job* job_;
  const Model* model_;
  std::map<std::string, NamedPart> parts_;
  std::vector<std::string> flaws_;  // by product
};

}  // namespace spotblue
