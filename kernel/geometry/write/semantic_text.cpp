#include "geometry/write/semantic_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <limits>
#include <map>
#include <optional>
#include <unordered_map>
#include <utility>

#include "geometry/model/semantic_class.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/geometry/size_words.hpp"
#include "spotblue/geometry/sizes.hpp"
#include "spotblue/standards/iso286.hpp"

namespace spotblue {
namespace {

// A real as ISO 10303-21 wants it: with a point, and E for the exponent.
std::string step_real(double value) {
  std::string text = fmt::format("{:.15G}", value == 0.0 ? 0.0 : value);
  if (text.find('.') == std::string::npos) {
    text.insert(std::min(text.find('E'), text.size()), ".");
  }
  return text;
}

std::string step_string(std::string_view text) {
  std::string quoted = "'";
  for (const char c : text) {
    quoted += c;
    if (c == '\'' || c == '\\') {
      quoted += c;
    }
  }
  return quoted + "'";
}

struct Change {
  std::size_t at = 0, length = 0;
  std::string by;
};

// Where a part's shape is and what its values are counted in.
struct ShapeOf {
  int property = 0, representation = 0, context = 0;
};

class SizeText {
 public:
  SizeText(std::string_view text, const StepText& entities, LengthUnit unit,
           const std::string& file)
      : text_(text),
        entities_(entities),
        unit_(unit),
        file_(file),
        last_(entities.entities().back().id) {}

  std::string with(const std::vector<PlacedSize>& sizes) {
    if (sizes.empty()) {
      return std::string(text_);
    }
    relabel();
    repair_grades();
    add_units();
    for (const PlacedSize& size : sizes) {
      add_size(size);
    }
    changes_.push_back({entities_.data_end(), 0, std::move(added_)});
    return changed();
  }

 private:
  int add(const std::string& entity) {
    if (last_ == std::numeric_limits<int>::max()) {
      throw Error(ErrorCode::unreadable, {file_, fmt::format("#{}", last_)},
                  "no number is left for an entity behind this one", "export the file again");
    }
    added_ += fmt::format("#{}={};\n", ++last_, entity);
    return last_;
  }

  void add_units() {
    length_unit_ = add("(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))");
    if (unit_ == LengthUnit::inch) {
      const int exponents = add("DIMENSIONAL_EXPONENTS(1.,0.,0.,0.,0.,0.,0.)");
      const int factor =
          add(fmt::format("LENGTH_MEASURE_WITH_UNIT(LENGTH_MEASURE(25.4),#{})", length_unit_));
      length_unit_ = add(fmt::format(
          "(CONVERSION_BASED_UNIT('INCH',#{})LENGTH_UNIT()NAMED_UNIT(#{}))", factor, exponents));
    }
  }

  [[nodiscard]] std::string in_unit(double value_mm) const {
    return step_real(unit_ == LengthUnit::inch ? value_mm / 25.4 : value_mm);
  }

  // ISO 10303-47 as AP242 uses it: the size applies to a shape aspect, which is one face or is put
  // together from one aspect a face.
  int add_aspect(const PlacedSize& size, const ShapeOf& shape) {
    const std::string name = step_string(size.size->feature);
    const auto one = [&](int face) {
      const int aspect = add(fmt::format("SHAPE_ASPECT({},'',#{},.T.)", name, shape.property));
      add(fmt::format("GEOMETRIC_ITEM_SPECIFIC_USAGE('','',#{},#{},#{})", aspect,
                      shape.representation, face));
      return aspect;
    };
    if (size.faces.size() == 1) {
      return one(size.faces.front());
    }
    const int whole =
        add(fmt::format("COMPOSITE_SHAPE_ASPECT({},'',#{},.T.)", name, shape.property));
    for (const int face : size.faces) {
      const int part = one(face);
      add(fmt::format("SHAPE_ASPECT_RELATIONSHIP('','',#{},#{})", whole, part));
    }
    return whole;
  }

  int add_tolerance(const SizeToWrite& size) {
    if (!size.tolerance_class.empty()) {
      const auto digit = size.tolerance_class.find_first_of("0123456789");
      return add(fmt::format("LIMITS_AND_FITS('{}','{}','{}','{}')",
                             size.tolerance_class.substr(0, digit),
                             word_of(size_kind(size.tolerance_class)),
                             size.tolerance_class.substr(digit), kClassSource));
    }
    const auto bound = [&](double value_mm) {
      return add(fmt::format("LENGTH_MEASURE_WITH_UNIT(LENGTH_MEASURE({}),#{})", in_unit(value_mm),
                             length_unit_));
    };
    const int lower = bound(size.deviations->lower_mm);
    const int upper = bound(size.deviations->upper_mm);
    return add(fmt::format("TOLERANCE_VALUE(#{},#{})", lower, upper));
  }

  int add_value(const char* name, double value_mm) {
    return add(
        fmt::format("(LENGTH_MEASURE_WITH_UNIT()MEASURE_REPRESENTATION_ITEM()MEASURE_WITH_UNIT("
                    "LENGTH_MEASURE({}),#{})REPRESENTATION_ITEM('{}'))",
                    in_unit(value_mm), length_unit_, name));
  }

  // "#12,#13"
  std::string add_values(const PlacedSize& placed) {
    const SizeToWrite& size = *placed.size;
    std::string values = fmt::format("#{}", add_value("nominal value", size.nominal_mm));
    SemanticSize stated;
    stated.characteristic = placed.characteristic;
    stated.nominal_mm = size.nominal_mm;
    stated.tolerance_class = size.tolerance_class;
    stated.deviations = size.deviations;
    values += fmt::format(",#{}", add(fmt::format("DESCRIPTIVE_REPRESENTATION_ITEM('{}','{}')",
                                                  kSizeWordsName, semantic_size_text(stated))));
    if (needs_limits(size.tolerance_class)) {
      const Limits made = limits(Length::mm(size.nominal_mm), size.tolerance_class);
      values += fmt::format(",#{}", add_value("lower limit", made.lower.in_mm()));
      values += fmt::format(",#{}", add_value("upper limit", made.upper.in_mm()));
    }
    return values;
  }

  void add_size(const PlacedSize& placed) {
    const ShapeOf shape = shape_of(placed);
    const int aspect = add_aspect(placed, shape);
    const bool width = placed.characteristic == SizeCharacteristic::width;
    const int size =
        add(fmt::format("DIMENSIONAL_SIZE(#{},'{}')", aspect, width ? "thickness" : "diameter"));
    const int values = add(fmt::format("SHAPE_DIMENSION_REPRESENTATION('',({}),#{})",
                                       add_values(placed), shape.context));
    add(fmt::format("DIMENSIONAL_CHARACTERISTIC_REPRESENTATION(#{},#{})", size, values));
    const int tolerance = add_tolerance(*placed.size);
    add(fmt::format("PLUS_MINUS_TOLERANCE(#{},#{})", tolerance, size));
  }

  // What holds shapes, looked up once for all sizes.
  void read_holders() {
    for (const StepText::Entity& entity : entities_.entities()) {
      const auto property = entities_.arguments(entity, "PRODUCT_DEFINITION_SHAPE");
      if (property && property->size() > 2) {
        property_of_[reference((*property)[2]).value_or(0)] = entity.id;
      }
      const auto arguments = entities_.arguments(entity);
      if (arguments && arguments->size() == 3 &&
          entities_.keyword(entity).ends_with("REPRESENTATION")) {
        for (const int item : references((*arguments)[1])) {
          holder_of_.try_emplace(item, entity.id, reference((*arguments)[2]).value_or(0));
        }
      }
    }
  }

  ShapeOf shape_of(const PlacedSize& size) {
    const auto known = shapes_.find(size.definition);
    if (known != shapes_.end()) {
      return known->second;
    }
    if (property_of_.empty()) {
      read_holders();
    }
    ShapeOf shape;
    if (const auto property = property_of_.find(size.definition); property != property_of_.end()) {
      shape.property = property->second;
    }
    for (const int solid : size.solids) {
      const auto holder = holder_of_.find(solid);
      if (holder != holder_of_.end() &&
          (shape.representation == 0 || holder->second.first < shape.representation)) {
        shape.representation = holder->second.first;
        shape.context = holder->second.second;
      }
    }
    if (shape.property == 0 || shape.representation == 0 || shape.context == 0) {
      throw Error(ErrorCode::unreadable,
                  {file_, fmt::format("part '{}' (#{})", size.size->product, size.definition)},
                  "it cannot be told which shape representation holds its solids",
                  "export the file again, each part with its own solids");
    }
    return shapes_[size.definition] = shape;
  }

  void replace(std::string_view piece, std::string by) {
    changes_.push_back(
        {static_cast<std::size_t>(piece.data() - text_.data()), piece.size(), std::move(by)});
  }

  void relabel() {
    // Schema name and year as Open CASCADE writes them for AP242 DIS.
    const std::string schema = entities_.schema();
    if (schema.starts_with("AP242")) {
      return;
    }
    const std::string_view named = entities_.quoted_schema();
    if (named.empty()) {
      throw Error(ErrorCode::unreadable, {file_, "FILE_SCHEMA"}, "the header names no schema",
                  "export the file again");
    }
    replace(named, "'AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF { 1 0 10303 442 1 1 4 }'");
    for (const StepText::Entity& entity : entities_.entities()) {
      const auto protocol = entities_.arguments(entity, "APPLICATION_PROTOCOL_DEFINITION");
      if (protocol && protocol->size() > 2) {
        replace((*protocol)[0], "'international standard'");
        replace((*protocol)[1], "'ap242_managed_model_based_3d_engineering'");
        replace((*protocol)[2], "2013");
      }
    }
  }

  // The header's preprocessor; empty when there is none.
  [[nodiscard]] std::string preprocessor() const {
    const auto name = entities_.header("FILE_NAME");
    return name && name->size() > 4 ? quoted((*name)[4]) : "";
  }

  void repair_grades() {
    const Writer writer = writer_of(preprocessor());
    if (writer != Writer::open_cascade_with_known_fault) {
      return;
    }
    for (const StepText::Entity& entity : entities_.entities()) {
      const auto text = entities_.arguments(entity, "LIMITS_AND_FITS");
      if (!text || text->size() < 4) {
        continue;
      }
      const ClassText written{quoted((*text)[0]), quoted((*text)[1]), quoted((*text)[2]),
                              quoted((*text)[3])};
      const ClassReading reading = read_class(written, writer);
      if (written.source.empty() && reading.doubt.empty()) {
        const auto digit = reading.tolerance_class.find_first_of("0123456789");
        replace((*text)[0], step_string(reading.tolerance_class.substr(0, digit)));
        replace((*text)[2], step_string(reading.tolerance_class.substr(digit)));
        replace((*text)[3], step_string(kClassSource));
      }
    }
  }

  std::string changed() {
    std::sort(changes_.begin(), changes_.end(),
              [](const Change& a, const Change& b) { return a.at < b.at; });
    std::string result;
    std::size_t at = 0;
    for (const Change& change : changes_) {
      result += text_.substr(at, change.at - at);
      result += change.by;
      at = change.at + change.length;
    }
    return result += text_.substr(at);
  }

  std::string_view text_;
  const StepText& entities_;
  LengthUnit unit_;
  std::string file_;
  int last_;  // the greatest number of an entity
  int length_unit_ = 0;
  std::string added_;
  std::vector<Change> changes_;
  std::unordered_map<int, ShapeOf> shapes_;
  std::unordered_map<int, int> property_of_;                // of a product definition
  std::unordered_map<int, std::pair<int, int>> holder_of_;  // representation and its context
};

}  // namespace

std::string with_sizes(std::string_view text, const StepText& entities,
                       const std::vector<PlacedSize>& sizes, LengthUnit unit,
                       const std::string& file) {
  return SizeText(text, entities, unit, file).with(sizes);
}

}  // namespace spotblue
