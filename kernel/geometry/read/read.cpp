#include "spotblue/geometry/read.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <iterator>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/work_limit.hpp"
#include "geometry/model/sha256.hpp"
#include "geometry/occt/contained.hpp"
#include "geometry/occt/require_finished.hpp"
#include "geometry/occt/shape_store.hpp"
#include "geometry/occt/unfolding.hpp"
#include "geometry/part21/step_axes.hpp"
#include "geometry/part21/step_bare.hpp"
#include "geometry/part21/step_declared.hpp"
#include "geometry/part21/step_mapped.hpp"
#include "geometry/part21/step_outside.hpp"
#include "geometry/part21/step_placement.hpp"
#include "geometry/part21/step_text.hpp"
#include "geometry/part21/step_units.hpp"
#include "geometry/read/completeness.hpp"
#include "geometry/read/finite_model.hpp"
#include "geometry/read/model_archive.hpp"
#include "geometry/read/model_format.hpp"
#include "geometry/read/read_within.hpp"
#include "geometry/read/shape_file.hpp"
#include "geometry/read/step_transfer.hpp"
#include "geometry/tree/outside_files.hpp"
#include "geometry/tree/step_faults.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/file_bytes.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/base/stop.hpp"

namespace spotblue {
namespace {

Error unreadable(const std::string& file, const std::string& what, const std::string& cure) {
  return {ErrorCode::unreadable, {file, ""}, what, cure};
}

Arrival transfer(const std::string& file, const std::function<Arrival()>& read,
                 const ReadLimits& limits) {
  const auto work = [&] { return to_bytes(read()); };
  const Contained run =
      limits.read_in == ReadIn::this_process ? run_here(work) : run_contained(work, limits);
  if (run.end != Contained::End::finished) {
    stop_if_asked();
  }
  require_finished(run, file, limits);
  return arrival_from_bytes(run.bytes);
}

enum class Formats { all, step_only };

// Files that refer to files that refer to the same ones again would be read without end. Choice of
// this program, no source.
constexpr std::size_t kMostFiles = 1000;

// A file that is being read, and those that led to it.
struct Reading {
  const std::filesystem::path& file;
  const std::filesystem::path& folder;  // for the shapes
  const ReadLimits& limits;
  Completeness completeness = Completeness::all_or_error;
  const Reading* from = nullptr;
  // Files that may still be read for the first one, whatever refers to them.
  std::size_t* files_left = nullptr;
  [[nodiscard]] std::string name() const { return shown_name(file); }
  [[nodiscard]] bool is_under_way(const std::filesystem::path& other) const {
    return file.filename() == other.filename() || (from != nullptr && from->is_under_way(other));
  }
};

ModelWithin read_from(const std::filesystem::path& file, const ReadLimits& limits,
                      Completeness completeness, Formats formats, const Reading* from);

// Empty, or why nothing of it could be taken in.
std::string take_file(Arrival& arrival, const std::string& name,
                      const std::vector<int>& definitions, const Reading& reading) {
  const FileBeside beside = file_beside(reading.file, name);
  if (beside.path.empty()) {
    return beside.why;
  }
  if (reading.is_under_way(beside.path)) {
    return "refers back to the file that it is part of";
  }
  if (*reading.files_left == 0) {
    return fmt::format("is one of more than {} files that this one leads to", kMostFiles);
  }
  --*reading.files_left;
  std::vector<OutsidePlace> places;
  std::copy_if(arrival.elsewhere.begin(), arrival.elsewhere.end(), std::back_inserter(places),
               [&](const OutsidePlace& place) {
                 return std::find(definitions.begin(), definitions.end(), place.definition) !=
                        definitions.end();
               });
  if (places.empty()) {
    return "is beside this file, but where its parts belong is not said";
  }
  try {
    const ModelWithin other =
        read_from(beside.path, reading.limits, reading.completeness, Formats::step_only, &reading);
    const double unfolded =
        static_cast<double>(arrival.model.occurrences.size()) +
        static_cast<double>(places.size()) * static_cast<double>(other.model.occurrences.size());
    if (unfolded > reading.limits.occurrences) {
      throw too_many_parts(reading.limits.occurrences);
    }
    take_in(arrival.model, reading.folder, other.model, places);
    std::vector<std::string>& files = arrival.model.file.files;
    files.insert(files.end(), other.model.file.files.begin(), other.model.file.files.end());
    if (arrival.model.file.unit.empty()) {
      arrival.model.file.unit = other.model.file.unit;
    }
    arrival.not_looked_at.insert(arrival.not_looked_at.end(), other.not_looked_at.begin(),
                                 other.not_looked_at.end());
  } catch (const LimitReached&) {
    throw;
  } catch (const Error& error) {
    stop_if_asked();
    if (reading.completeness == Completeness::all_or_error) {
      throw;
    }
    return fmt::format("can not be read: {}", error.rule());
  }
  return {};
}

// Reads the files beside that hold parts of this one; a note for each that is missing.
std::vector<Note> take_outside(Arrival& arrival, const Declared& declared, const Reading& reading) {
  std::map<std::string, std::vector<int>> files;
  for (const OutsidePart& part : declared.outside) {
    files[part.file].push_back(part.definition);
  }
  std::vector<Note> missing;
  for (const auto& [name, definitions] : files) {
    const std::string why = take_file(arrival, name, definitions, reading);
    if (!why.empty()) {
      missing.push_back({fmt::format("file '{}'", name), why + ": what it holds is missing"});
    }
  }
  return missing;
}

// Throws Error incomplete, or notes what is missing.
void check_complete(Arrival& arrival, const Declared& declared, std::vector<Note> missing,
                    const Reading& reading) {
  for (Note& note : missing_from(arrival, declared)) {
    missing.push_back(std::move(note));
  }
  const bool nothing = arrival.model.products.empty();
  if (!missing.empty() && (nothing || reading.completeness == Completeness::all_or_error)) {
    throw Error(
        ErrorCode::incomplete, {reading.name(), ""}, summary_of(missing),
        nothing ? "export the file again" : "export the file again, or accept a partial model");
  }
  if (nothing) {
    throw unreadable(reading.name(), "no solid of the file belongs to a product",
                     "export the file again");
  }
  if (!arrival.lame_faces.empty()) {
    distrust_parts(arrival.model, fmt::format("face #{} arrived without all of its edges",
                                              arrival.lame_faces.front().entity));
  }
  for (Note& note : missing) {
    leave_out(std::move(note), arrival.model);
  }
}

// Open CASCADE does not survive some solids that it makes nothing of.
void refuse_unmade(const Declared& declared, const Reading& reading) {
  const auto unmade = std::find_if(declared.solids.begin(), declared.solids.end(),
                                   [](const DeclaredSolid& solid) { return !solid.of_shells; });
  if (unmade != declared.solids.end() && reading.completeness == Completeness::all_or_error) {
    throw Error(ErrorCode::incomplete, {reading.name(), fmt::format("#{}", unmade->entity)},
                fmt::format("solids of the kind {} are not read", unmade->kind),
                "export the parts as solids that are bounded by faces, or accept a partial model");
  }
}

// What the text alone tells of its placements, axes and units, and of parts without solids.
struct TextFaults {
  std::vector<Note> unplaced;
  std::vector<Note> faults;
  std::vector<Note> bare;
};

TextFaults faults_of(const StepText& text, const Declared& declared) {
  const RepresentationOwners owners = representation_owners(text);
  Placements placements = read_placements(text, owners);
  TextFaults all{std::move(placements.unplaced), axis_faults(text), bare_parts(text, declared)};
  std::vector<Note> units = unit_faults(text, owners);
  std::move(placements.faults.begin(), placements.faults.end(), std::back_inserter(all.faults));
  std::move(units.begin(), units.end(), std::back_inserter(all.faults));
  return all;
}

Arrival arrive_from_step(const std::string& text, const Reading& reading) {
  const std::string name = reading.name();
  const StepText entities(text, name, reading.limits);
  const Declared declared = read_declared(entities, name, reading.limits);
  if (declared.solids.empty() && declared.outside.empty()) {
    throw unreadable(name, fmt::format("the file holds no solid, {}", declared.instead),
                     "export the parts as solids");
  }
  const TextFaults told = faults_of(entities, declared);
  refuse_faults(told.faults, name, reading.completeness);
  refuse_unmade(declared, reading);
  std::optional<StepReader> parsed;
  Arrival arrival = transfer(
      name, [&] { return transfer_step(text, reading.folder, reading.completeness, parsed); },
      reading.limits);
  parsed.reset();
  std::vector<Note> missing = take_outside(arrival, declared, reading);
  check_complete(arrival, declared, std::move(missing), reading);
  Model& model = arrival.model;
  model.notes.insert(model.notes.end(), told.unplaced.begin(), told.unplaced.end());
  note_faults(told.faults, model);
  for (const Note& part : told.bare) {
    leave_out(part, model);
  }
  model.file.protocol = declared.protocol;
  if (!declared.unit.empty()) {
    model.file.unit = declared.unit;
  } else if (!declared.solids.empty()) {
    model.notes.push_back({"length unit", "the file names none: mm are taken for granted"});
  }
  return arrival;
}

Arrival arrive_from_shapes(const std::filesystem::path& file, const std::string& bytes,
                           ModelFormat format, const std::filesystem::path& folder,
                           const ReadLimits& limits, Completeness completeness) {
  const ShapeFile shapes{bytes, format, shown_name(file.stem()), limits, completeness};
  Arrival arrival = transfer(
      shown_name(file), [&] { return transfer_shape_file(shapes, folder); }, limits);
  arrival.model.file.protocol = format == ModelFormat::xbf ? "xbf" : "brep";
  return arrival;
}

ModelWithin read_from(const std::filesystem::path& file, const ReadLimits& limits,
                      Completeness completeness, Formats formats, const Reading* from) {
  const std::string name = shown_name(file);
  std::string bytes = read_bytes(file, limits.file_mb, "a STEP file");
  const std::string hash = sha256(bytes);
  drop_byte_order_mark(bytes);
  stop_if_asked();
  const ModelFormat format = formats == Formats::all ? format_of(bytes, file) : ModelFormat::step;
  const auto store = std::make_shared<const ShapeStore>(make_shape_folder());
  std::size_t files_left = kMostFiles;
  Arrival arrival =
      format == ModelFormat::step
          ? arrive_from_step(bytes, {file, store->folder(), limits, completeness, from,
                                     from != nullptr ? from->files_left : &files_left})
          : arrive_from_shapes(file, bytes, format, store->folder(), limits, completeness);
  ModelWithin read{std::move(arrival.model), std::move(arrival.not_looked_at)};
  if (const std::string remark = remark_on_name(format, file); !remark.empty()) {
    read.model.notes.push_back({"file name", remark});
  }
  require_finite(read.model, name, completeness);
  read.model.file.name = shown_name(file);
  read.model.file.files.insert(read.model.file.files.begin(), shown_name(file));
  read.model.file.sha256 = hash;
  read.model.shapes = store;
  return read;
}

}  // namespace

ModelWithin read_within(const std::filesystem::path& file, const ReadLimits& limits,
                        Completeness completeness) {
  return read_from(file, limits, completeness, Formats::all, nullptr);
}

Model read_model(const std::filesystem::path& file, const ReadLimits& limits,
                 Completeness completeness) {
  return read_from(file, limits, completeness, Formats::all, nullptr).model;
}

Model read_step(const std::filesystem::path& file, const ReadLimits& limits,
                Completeness completeness) {
  return read_from(file, limits, completeness, Formats::step_only, nullptr).model;
}

}  // namespace spotblue
