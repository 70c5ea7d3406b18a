// The service that Plugin::Load hands to a host program.

#include "plugin/service.hpp"

#include <fmt/format.h>

#include <Standard_ImmutableObject.hxx>
#include <Standard_OutOfMemory.hxx>
#include <algorithm>
#include <iterator>
#include <new>
#include <nlohmann/json.hpp>
#include <optional>
#include <utility>

#include "geometry/occt/occt_versions.hpp"
#include "plugin/subject/document_findings.hpp"
#include "plugin/subject/document_marks.hpp"
#include "plugin/subject/subject.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"
#include "spotblue/job/bare_job.hpp"
#include "spotblue/job/job_file.hpp"
#include "spotblue/report/json.hpp"
#include "spotblue/report/sentence_text.hpp"

namespace spotblue::plugin {
namespace {

constexpr const char* kDocumentName = "document";
constexpr const char* kShapesName = "shapes";
constexpr const char* kNoMemory =
    "there is no more memory to be had; look at fewer parts at a time, or end other programs";

// What `work` gives; where it fails, an empty result whose `trouble` says why.
template <typename Result, typename Work>
Result answered(const Work& work) {
  Result result;
  const auto failed = [&](std::string why) {
    result = {};
    result.trouble = shortened(shown_text(why), kMostMessage);
  };
  try {
    work(result);
  } catch (const Standard_OutOfMemory&) {
    failed(kNoMemory);
  } catch (const Standard_ImmutableObject&) {
    failed("the document may not be changed now; open a command of it first");
  } catch (const Standard_Failure& failure) {
    failed(
        fmt::format("Open CASCADE failed: {} {}; check the shapes there, and report it with them "
                    "if they are sound",
                    occt::kind_of(failure), occt::words_of(failure)));
  } catch (const std::bad_alloc&) {
    failed(kNoMemory);
  } catch (const std::exception& failure) {
    failed(failure.what());
  } catch (...) {
    failed("it failed for an unknown reason; report it with the shapes");
  }
  return result;
}

// Never "-0".
double plain(double value) { return value == 0.0 ? 0.0 : value; }

Error mistaken(const std::string& what, const std::string& cure) {
  return {ErrorCode::bad_input, {}, what, cure};
}

void require_document(const Handle(TDocStd_Document) & document) {
  if (!is_xde(document)) {
    throw mistaken("what was given is no XDE document", "give one of the format BinXCAF");
  }
}

LookBounds given(const host::Bounds& bounds) {
  const auto unless_none = [](double value) {
    return value == 0.0 ? std::nullopt : std::optional(value);
  };
  return {unless_none(bounds.seconds), unless_none(bounds.memory_mb)};
}

Held held(const Handle(TDocStd_Document) & document) {
  require_document(document);
  return {kDocumentName, document, {}};
}

Held held(const std::vector<host::Part>& parts) {
  std::vector<NamedPlace> shapes;
  for (const host::Part& part : parts) {
    if (part.shape.IsNull()) {
      throw mistaken("the part '" + part.name + "' has no shape",
                     "leave it out, or give its shape");
    }
    shapes.push_back({part.name, part.shape});
  }
  return {kShapesName, {}, std::move(shapes)};
}

std::vector<std::string> lines_of(const std::vector<Note>& notes) {
  std::vector<std::string> lines;
  for (const Note& note : notes) {
    lines.push_back(note.about + ": " + note.text);
  }
  return lines;
}

class Records {
 public:
  explicit Records(const Look& look) : look_(look) {}

  [[nodiscard]] std::vector<host::Seat> seats() {
    const Seats& seats = look_.seats;
    add("radial", seats.radial, &RadialSeat::hole, &RadialSeat::shaft,
        [](const RadialSeat& one) { return one.clearance; });
    add("axial", seats.axial, &AxialSeat::a, &AxialSeat::b,
        [](const AxialSeat& one) { return one.gap; });
    add("taper", seats.taper, &TaperSeat::hole, &TaperSeat::shaft,
        [](const TaperSeat& one) { return one.gap; });
    add("width", seats.width, &WidthSeat::slot, &WidthSeat::key,
        [](const WidthSeat& one) { return one.clearance; });
    add("thread", seats.threads, &Thread::hole, &Thread::screw,
        [](const Thread& one) { return one.hole_diameter - one.screw_diameter; });
    return std::move(seats_);
  }

  [[nodiscard]] std::vector<host::Foul> fouls() const {
    std::vector<host::Foul> all;
    for (const Foul& one : look_.fouls.found) {
      all.push_back({place(one.a), place(one.b), one.volume, one.depth});
    }
    return all;
  }

  [[nodiscard]] std::vector<std::string> notes() const {
    std::vector<std::string> all = lines_of(look_.model.notes);
    std::ranges::move(lines_of(look_.fouls.notes), std::back_inserter(all));
    return all;
  }

 private:
  [[nodiscard]] const std::string& place(OccurrenceId occurrence) const {
    return look_.model.occurrences[occurrence].id;
  }

  template <typename Seat, typename Clearance>
  void add(const char* kind, const std::vector<Seat>& seats, FeatureRef Seat::*hole,
           FeatureRef Seat::*shaft, const Clearance& clearance) {
    for (const Seat& seat : seats) {
      seats_.push_back({kind, feature_id(look_.model, seat.*hole),
                        feature_id(look_.model, seat.*shaft), place((seat.*hole).occurrence),
                        place((seat.*shaft).occurrence), plain(clearance(seat))});
    }
  }

  const Look& look_;
  std::vector<host::Seat> seats_;
};

void fill(host::LookResult& result, const Subject& subject) {
  Records records(subject.result.look);
  result.parts = subject.result.look.model.products.size();
  result.occurrences = subject.result.look.model.occurrences.size();
  result.seats = records.seats();
  result.fouls = records.fouls();
  result.notes = records.notes();
  result.not_looked_at = lines_of(subject.result.look.not_looked_at);
  result.json = look_json(subject.result.look);
}

std::vector<host::Value> values(const std::vector<Quantity>& quantities) {
  std::vector<host::Value> all;
  for (const Quantity& one : quantities) {
    const double* const number = number_in(one);
    all.push_back(number != nullptr
                      ? host::Value{key_of(one), plain(*number), ""}
                      : host::Value{key_of(one), 0.0, text_of(std::get<Saying>(one.value))});
  }
  return all;
}

std::vector<std::string> names(const std::vector<Reference>& references) {
  std::vector<std::string> all;
  for (const Reference& one : references) {
    all.push_back(one.name);
  }
  return all;
}

void fill(host::CheckResult& result, const Subject& subject) {
  const OutcomeCount count = count_outcomes(subject.result.findings);
  result.conforming = count.conforming;
  result.nonconforming = count.nonconforming;
  result.undecided = count.undecided;
  for (const Finding& one : subject.result.findings) {
    result.findings.push_back({one.id, one.kind, std::string(outcome_name(one.outcome)),
                               names(one.about), values(one.wanted), values(one.found),
                               values(one.margin), text_of(one.basis), text_of(one.advice),
                               text_of(one.caution)});
  }
  result.json = check_json(subject.result);
}

Subject checked(const Handle(TDocStd_Document) & document, const host::CheckWishes& wishes) {
  const std::string& job_file = wishes.job_file;
  Job job = job_file.empty() ? bare_job(kDocumentName, LengthUnit::mm)
                             : read_job(path_of_shown(job_file), Outside::allowed);
  Subject subject = plugin::checked(held(document), std::move(job), given(wishes.bounds));
  if (job_file.empty() && subject.result.look.model.semantic_sizes.empty()) {
    throw mistaken("the document states no size to be checked by",
                   "state some on its faces, or name a job file");
  }
  return subject;
}

class OwnService final : public host::Service {
 public:
  [[nodiscard]] int interface_version() const noexcept override { return host::kInterface; }
  [[nodiscard]] std::string version() const override { return SPOTBLUE_VERSION; }

  [[nodiscard]] host::LookResult look_at_document(const Handle(TDocStd_Document) & document,
                                                  const host::Bounds& bounds) override {
    return answered<host::LookResult>([&](host::LookResult& result) {
      fill(result, looked_at(held(document), bounded({}, given(bounds))));
    });
  }

  [[nodiscard]] host::LookResult look_at_shapes(const std::vector<host::Part>& parts,
                                                const host::Bounds& bounds) override {
    return answered<host::LookResult>([&](host::LookResult& result) {
      fill(result, looked_at(held(parts), bounded({}, given(bounds))));
    });
  }

  [[nodiscard]] host::CheckResult check_document(const Handle(TDocStd_Document) & document,
                                                 const host::CheckWishes& wishes) override {
    return answered<host::CheckResult>([&](host::CheckResult& result) {
      require_document(document);
      if (wishes.keep || wishes.mark) {
        require_changeable(document);
      }
      const Subject subject = checked(document, wishes);
      fill(result, subject);
      if (wishes.keep) {
        result.notes_kept = keep_findings(subject);
      }
      if (wishes.mark) {
        plugin::clear_marks(document);
        result.marks_set = set_marks(subject).size();
      }
    });
  }

  [[nodiscard]] host::CheckResult check_shapes(const std::vector<host::Part>& parts,
                                               const std::string& job_file,
                                               const host::Bounds& bounds) override {
    return answered<host::CheckResult>([&](host::CheckResult& result) {
      if (job_file.empty()) {
        throw mistaken("shapes state no sizes to be checked by", "name a job file");
      }
      Job job = read_job(path_of_shown(job_file), Outside::allowed);
      fill(result, plugin::checked(held(parts), std::move(job), given(bounds)));
    });
  }

  [[nodiscard]] std::string kept_findings(const Handle(TDocStd_Document) & document,
                                          std::string& trouble) override {
    struct Kept {
      std::string trouble, json;
    };
    Kept kept = answered<Kept>([&](Kept& result) {
      require_document(document);
      result.json = plugin::kept_findings(document).dump(-1, ' ', true);
    });
    trouble = std::move(kept.trouble);
    return std::move(kept.json);
  }

  std::size_t clear_marks(const Handle(TDocStd_Document) & document,
                          std::string& trouble) override {
    struct Cleared {
      std::string trouble;
      std::size_t count = 0;
    };
    Cleared cleared = answered<Cleared>([&](Cleared& result) {
      require_document(document);
      result.count = plugin::clear_marks(document);
    });
    trouble = std::move(cleared.trouble);
    return cleared.count;
  }
};

}  // namespace

}  // namespace spotblue::plugin

/// What Plugin::Load asks: the service, for as long as the library is loaded, or null.
extern "C" __attribute__((visibility("default"))) Standard_Transient* PLUGINFACTORY(
    const Standard_GUID& guid) {
  static const Handle(Standard_Transient) service = new spotblue::plugin::OwnService;
  return guid == Standard_GUID(spotblue::host::kServiceGuid) ? service.get() : nullptr;
}
