#include "group/match/lost_names.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <utility>

#include "spotblue/job/feature_name.hpp"

namespace spotblue {
namespace {

// By name, the others by number. Choice of this program, no source.
constexpr std::size_t kNotesTold = 3;

bool is_feature_form(const std::string& name) { return !part_of_feature(name).empty(); }

std::string_view leaf_of(std::string_view path) { return path.substr(path.rfind('/') + 1); }

bool speaks_of(const Note& note, std::string_view part) {
  const std::string quoted = fmt::format("'{}'", leaf_of(part));
  return note.about == part || note.about == leaf_of(part) ||
         note.about.find(quoted) != std::string::npos ||
         note.text.find(quoted) != std::string::npos;
}

class Sieve {
 public:
  Sieve(const Model& model, const Names& names) : model_(model), names_(names) {}

  template <typename Entry>
  void features(std::string_view list, std::vector<Entry>& entries,
                std::initializer_list<std::pair<std::string_view, std::string Entry::*>> keys) {
    sift(list, entries, keys, [this](const std::string& name) { return why_no_feature(name); });
  }

  template <typename Entry>
  void parts(std::string_view list, std::vector<Entry>& entries,
             std::initializer_list<std::pair<std::string_view, std::string Entry::*>> keys) {
    sift(list, entries, keys, [this](const std::string& name) { return why_no_part(name); });
  }

  template <typename Entry>
  void parts_or_faces(
      std::string_view list, std::vector<Entry>& entries,
      std::initializer_list<std::pair<std::string_view, std::string Entry::*>> keys) {
    sift(list, entries, keys, [this](const std::string& name) {
      return !names_.is_part(name) && is_feature_form(name) ? why_no_feature(name)
                                                            : why_no_part(name);
    });
  }

  void meshes(std::vector<Mesh>& entries) {
    std::erase_if(entries, [this](const Mesh& mesh) {
      return is_lost("meshes", mesh.line,
                     {{"part", &mesh.a.part, why_no_part(mesh.a.part)},
                      {"part", &mesh.b.part, why_no_part(mesh.b.part)}});
    });
  }

  void end_play(std::vector<EndPlayWant>& entries) {
    std::erase_if(entries, [this](const EndPlayWant& want) {
      std::vector<Spoken> spoken{{"of", &want.of, why_no_part(want.of)}};
      if (want.on) {
        spoken.push_back({"on", &*want.on, why_no_part(*want.on)});
      }
      return is_lost("wants", want.line, spoken);
    });
  }

  void turning(std::vector<Turning>& entries) {
    std::erase_if(entries, [this](const Turning& entry) {
      std::vector<Spoken> spoken{{"part", &entry.part, why_no_part(entry.part)}};
      if (!entry.at.empty()) {
        spoken.push_back({"at", &entry.at, why_no_feature(entry.at)});
      }
      return is_lost("turning", entry.line, spoken);
    });
  }

  void stock(std::vector<SharedStock>& entries) {
    std::erase_if(entries, [this](const SharedStock& shared) {
      std::vector<Spoken> spoken;
      for (const std::string& part : shared.parts) {
        spoken.push_back({"parts", &part, why_no_part(part)});
      }
      return is_lost("stock", shared.line, spoken);
    });
  }

  void adjust(std::vector<Adjust>& entries) {
    std::erase_if(entries, [this](const Adjust& adjust) {
      std::vector<Spoken> spoken{{"part", &adjust.part, why_no_part(adjust.part)}};
      for (const auto* face : {&adjust.from, &adjust.to}) {
        if (*face) {
          spoken.push_back({"between", &**face, why_no_feature(**face)});
        }
      }
      return is_lost("adjust", adjust.line, spoken);
    });
  }

  [[nodiscard]] std::vector<LostName> lost() { return std::move(lost_); }

 private:
  // A name of an entry: nothing where the model has it, empty where it has not and nothing that is
  // missing can be it.
  struct Spoken {
    std::string_view key;
    const std::string* name = nullptr;
    std::optional<std::string> why;
  };

  template <typename Entry, typename Keys, typename Why>
  void sift(std::string_view list, std::vector<Entry>& entries, const Keys& keys, const Why& why) {
    std::erase_if(entries, [&](const Entry& entry) {
      std::vector<Spoken> spoken;
      for (const auto& [key, name] : keys) {
        spoken.push_back({key, &(entry.*name), why(entry.*name)});
      }
      return is_lost(list, entry.line, spoken);
    });
  }

  bool is_lost(std::string_view list, const std::optional<JobLine>& line,
               const std::vector<Spoken>& spoken) {
    const Spoken* lost = nullptr;
    for (const Spoken& one : spoken) {
      if (one.why && one.why->empty()) {
        return false;
      }
      lost = lost == nullptr && one.why ? &one : lost;
    }
    if (lost != nullptr) {
      lost_.push_back({list, lost->key, line, *lost->name, *lost->why});
    }
    return lost != nullptr;
  }

  [[nodiscard]] std::optional<std::string> why_no_part(const std::string& name) const {
    return names_.is_placed(name) ? std::nullopt : std::optional(missing(name));
  }

  [[nodiscard]] std::optional<std::string> why_no_feature(const std::string& name) const {
    const std::string part = part_of_feature(name);
    if (!names_.is_placed(part)) {
      return missing(part);
    }
    if (names_.is_feature(name)) {
      return std::nullopt;
    }
    const std::string& flaw = names_.flaw_of(part);
    return flaw.empty() ? told(part) : part + ": " + flaw;
  }

  // The notes that name the part.
  [[nodiscard]] std::string told(std::string_view part) const {
    std::vector<const Note*> notes;
    for (const Note& note : model_.not_compared) {
      if (speaks_of(note, part)) {
        notes.push_back(&note);
      }
    }
    return text_of(notes);
  }

  [[nodiscard]] std::string missing(std::string_view part) const {
    if (part.empty()) {
      return {};
    }
    if (std::string by_name = told(part); !by_name.empty()) {
      return by_name;
    }
    std::vector<const Note*> all;
    for (const Note& note : model_.not_compared) {
      all.push_back(&note);
    }
    return text_of(all);
  }

  [[nodiscard]] static std::string text_of(const std::vector<const Note*>& notes) {
    std::string text;
    for (std::size_t i = 0; i < std::min(notes.size(), kNotesTold); ++i) {
      text += fmt::format("{}{}: {}", i == 0 ? "" : "; ", notes[i]->about, notes[i]->text);
    }
    return notes.size() > kNotesTold
               ? fmt::format("{}; and {} more", text, notes.size() - kNotesTold)
               : text;
  }

  const Model& model_;
  const Names& names_;
  std::vector<LostName> lost_;
};

}  // namespace

JobOfWhatArrived job_of_what_arrived(Job job, const Model& model, const Names& names) {
  // What several plans share may tell of parts that this one has not.
  std::erase_if(job.parts, [&](const JobPart& part) {
    return part.line && !part.line->file.empty() && !names.is_part(part.part);
  });
  const bool all_arrived =
      model.not_compared.empty() && std::ranges::all_of(model.products, [](const Product& product) {
        return product.unsound.empty();
      });
  if (all_arrived) {
    return {std::move(job), {}};
  }
  Sieve sieve(model, names);
  sieve.parts("parts", job.parts, {{"part", &JobPart::part}});
  sieve.stock(job.stock);
  sieve.features("fits", job.fits, {{"hole", &FitWant::hole}, {"shaft", &FitWant::shaft}});
  sieve.features("threads", job.threads,
                 {{"hole", &ThreadWant::hole}, {"screw", &ThreadWant::screw}});
  sieve.features("sizes", job.sizes, {{"feature", &SizeWant::feature}});
  sieve.features("measured", job.measured, {{"feature", &MeasuredSize::feature}});
  sieve.parts_or_faces("measured", job.measured_gaps,
                       {{"between", &MeasuredGap::a}, {"between", &MeasuredGap::b}});
  sieve.parts_or_faces("wants", job.axial,
                       {{"between", &AxialWant::a}, {"between", &AxialWant::b}});
  sieve.features("tapers", job.tapers, {{"hole", &TaperWant::hole}, {"shaft", &TaperWant::shaft}});
  sieve.parts("allow", job.allowed,
              {{"between", &AllowedOverlap::a}, {"between", &AllowedOverlap::b}});
  sieve.turning(job.turning);
  sieve.parts("fixed", job.fixed, {{"between", &Fixing::a}, {"between", &Fixing::b}});
  sieve.parts("keep_off", job.keep_off, {{"between", &KeepOff::a}, {"between", &KeepOff::b}});
  sieve.features("surfaces", job.surfaces, {{"feature", &Surface::feature}});
  sieve.features("lengths", job.lengths,
                 {{"between", &PartLength::a}, {"between", &PartLength::b}});
  sieve.end_play(job.end_play);
  sieve.adjust(job.adjust);
  sieve.meshes(job.meshes);
  sieve.features("cuts", job.cuts, {{"feature", &Cut::feature}});
  return {std::move(job), sieve.lost()};
}

}  // namespace spotblue
