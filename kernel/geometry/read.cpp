#include "spotblue/geometry/read.hpp"

#include <fmt/format.h>

#include <chrono>
#include <functional>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "geometry/completeness.hpp"
#include "geometry/contained.hpp"
#include "geometry/file_bytes.hpp"
#include "geometry/finite_model.hpp"
#include "geometry/model_archive.hpp"
#include "geometry/model_format.hpp"
#include "geometry/read_timed.hpp"
#include "geometry/shape_file.hpp"
#include "geometry/shape_store.hpp"
#include "geometry/step_declared.hpp"
#include "geometry/step_placement.hpp"
#include "geometry/step_text.hpp"
#include "geometry/step_transfer.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

Error unreadable(const std::string& file, const std::string& what, const std::string& cure) {
  return {ErrorCode::unreadable, {file, ""}, what, cure};
}

Error ended_badly(const std::string& file, const Contained& run, const ReadLimits& limits) {
  switch (run.end) {
    case Contained::End::out_of_time:
      return unreadable(file, fmt::format("reading took longer than {:g} s", limits.seconds),
                        "raise the limit on time or simplify the file");
    case Contained::End::out_of_memory:
      return unreadable(file, fmt::format("reading took more than {:g} MB", limits.memory_mb),
                        "raise the limit on memory or simplify the file");
    case Contained::End::crashed:
      return unreadable(file, fmt::format("the kernel crashed on it ({})", run.detail),
                        "the file is damaged: export it again");
    default:
      return unreadable(file, fmt::format("the kernel can not read it ({})", run.detail),
                        "the file is damaged: export it again");
  }
}

Arrival transfer(const std::string& file, const std::function<Arrival()>& read,
                 const ReadLimits& limits) {
  const auto work = [&] { return to_bytes(read()); };
  Contained run =
      limits.read_in == ReadIn::this_process ? run_here(work) : run_contained(work, limits);
  throw_own_error(run, file);
  if (run.end != Contained::End::finished) {
    throw ended_badly(file, run, limits);
  }
  return arrival_from_bytes(std::move(run.bytes));
}

// Throws Error incomplete, or notes what is missing.
void check_complete(Arrival& arrival, const Declared& declared, const std::string& file,
                    Completeness completeness) {
  const std::vector<Note> missing = missing_from(arrival, declared);
  const bool nothing = arrival.model.products.empty();
  if (!missing.empty() && (nothing || completeness == Completeness::all_or_error)) {
    throw Error(
        ErrorCode::incomplete, {file, ""}, summary_of(missing),
        nothing ? "export the file again" : "export the file again, or accept a partial model");
  }
  if (nothing) {
    throw unreadable(file, "no solid of the file belongs to a product", "export the file again");
  }
  arrival.model.notes.insert(arrival.model.notes.end(), missing.begin(), missing.end());
}

Arrival arrive_from_step(const std::string& name, const std::string& text,
                         const std::filesystem::path& folder, const ReadLimits& limits,
                         Completeness completeness) {
  const StepText entities(text, name, limits);
  const Declared declared = read_declared(entities, name, limits);
  if (declared.solids.empty()) {
    throw unreadable(name, fmt::format("the file holds no solid, {}", declared.instead),
                     "export the parts as solids");
  }
  const std::vector<Note> placements = check_placements(entities, name);
  Arrival arrival = transfer(
      name, [&] { return transfer_step(text, folder); }, limits);
  check_complete(arrival, declared, name, completeness);
  Model& model = arrival.model;
  model.notes.insert(model.notes.end(), placements.begin(), placements.end());
  model.file.protocol = declared.protocol;
  model.file.unit = declared.unit;
  if (declared.unit.empty()) {
    model.notes.push_back({"length unit", "the file names none: mm are taken for granted"});
  }
  return arrival;
}

Arrival arrive_from_shapes(const std::filesystem::path& file, const std::string& bytes,
                           ModelFormat format, const std::filesystem::path& folder,
                           const ReadLimits& limits, Completeness completeness) {
  const ShapeFile shapes{bytes, format, shown_name(file.stem()), limits, completeness};
  Arrival arrival = transfer(
      file.string(), [&] { return transfer_shape_file(shapes, folder); }, limits);
  arrival.model.file.protocol = format == ModelFormat::xbf ? "xbf" : "brep";
  return arrival;
}

enum class Formats { all, step_only };

TimedModel read_timed(const std::filesystem::path& file, const ReadLimits& limits,
                      Completeness completeness, Formats formats) {
  using Clock = std::chrono::steady_clock;
  const auto start = Clock::now();
  const std::string name = file.string();
  std::string bytes = read_bytes(file, limits.file_mb);
  const std::string hash = sha256(bytes);
  drop_byte_order_mark(bytes);
  const ModelFormat format = formats == Formats::all ? format_of(bytes, file) : ModelFormat::step;
  const auto store = std::make_shared<const ShapeStore>(make_shape_folder());
  Arrival arrival =
      format == ModelFormat::step
          ? arrive_from_step(name, bytes, store->folder(), limits, completeness)
          : arrive_from_shapes(file, bytes, format, store->folder(), limits, completeness);
  TimedModel timed{std::move(arrival.model), 0.0, arrival.features_seconds};
  if (const std::string remark = remark_on_name(format, file); !remark.empty()) {
    timed.model.notes.push_back({"file name", remark});
  }
  require_finite(timed.model, name, completeness);
  timed.model.file.name = shown_name(file);
  timed.model.file.sha256 = hash;
  timed.model.shapes = store;
  timed.read_seconds =
      std::chrono::duration<double>(Clock::now() - start).count() - timed.features_seconds;
  return timed;
}

}  // namespace

TimedModel read_model_timed(const std::filesystem::path& file, const ReadLimits& limits,
                            Completeness completeness) {
  return read_timed(file, limits, completeness, Formats::all);
}

Model read_model(const std::filesystem::path& file, const ReadLimits& limits,
                 Completeness completeness) {
  return read_timed(file, limits, completeness, Formats::all).model;
}

Model read_step(const std::filesystem::path& file, const ReadLimits& limits,
                Completeness completeness) {
  return read_timed(file, limits, completeness, Formats::step_only).model;
}

}  // namespace spotblue
