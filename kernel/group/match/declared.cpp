#include "group/match/declared.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <string_view>
#include <utility>

#include "group/match/name_uses.hpp"
#include "spotblue/job/feature_name.hpp"
#include "spotblue/mechanics/tooth_form.hpp"

namespace spotblue {
namespace {

// One occurrence's entry wins over its product's; two of the same reach contradict each other.
template <typename Want, typename Key>
class Narrowest {
 public:
  Narrowest(const Job& job, std::string_view list) : job_(job), list_(list) {}

  void add(const Key& key, Meant meant, const Want& want) {
    const auto [place, fresh] = chosen_.try_emplace(key, std::pair{meant, &want});
    if (fresh) {
      return;
    }
    auto& [earlier_meant, earlier] = place->second;
    if (earlier_meant == meant && earlier != &want) {
      refuse_second(job_, list_, earlier->line, want.line);
    }
    if (meant > earlier_meant) {
      place->second = {meant, &want};
    }
  }

  [[nodiscard]] std::map<Key, const Want*> all() const {
    std::map<Key, const Want*> wants;
    for (const auto& [key, chosen] : chosen_) {
      wants.emplace(key, chosen.second);
    }
    return wants;
  }

 private:
  const Job& job_;
  std::string_view list_;
  std::map<Key, std::pair<Meant, const Want*>> chosen_;
};

std::vector<const JobPart*> declare_parts(const Job& job, const Names& names, std::size_t count) {
  Narrowest<JobPart, std::size_t> chosen(job, "parts");
  for (const JobPart& part : job.parts) {
    const NamedPart named = names.part(part.part, {"parts", "part", part.line});
    for (const OccurrenceId occurrence : named.occurrences) {
      chosen.add(occurrence, named.meant, part);
    }
  }
  std::vector<const JobPart*> parts(count, nullptr);
  for (const auto& [occurrence, part] : chosen.all()) {
    parts.at(occurrence) = part;
  }
  return parts;
}

template <typename Want>
std::map<Subject, const Want*> declare_features(const Job& job, const Names& names,
                                                std::string_view list,
                                                const std::vector<Want>& wants) {
  Narrowest<Want, Subject> chosen(job, list);
  for (const Want& want : wants) {
    const NamedFeature named = names.feature(want.feature, {list, "feature", want.line});
    for (const FeatureRef& feature : named.refs) {
      chosen.add(subject_of(feature), named.meant, want);
    }
  }
  return chosen.all();
}

Subjects part_or_face(const Names& names, const std::string& name, const Entry& entry) {
  // A name with a feature's form that is no part is looked up as a feature, for the better error.
  if (!names.is_part(name) && !part_of_feature(name).empty()) {
    return subjects_of(names.feature(name, entry));
  }
  return subjects_of(names.part(name, entry));
}

template <typename Want>
const Want* only(const Job& job, std::string_view list, const std::vector<Want>& wants,
                 const std::vector<std::size_t>& found) {
  if (found.size() > 1) {
    refuse_second(job, list, wants[found[0]].line, wants[found[1]].line);
  }
  return found.empty() ? nullptr : &wants[found.front()];
}

template <typename Want>
PairBook in_hole_book(const Names& names, std::string_view list, const std::vector<Want>& wants,
                      std::string_view key, std::string Want::*inner) {
  PairBook book(Order::matters);
  for (const Want& want : wants) {
    // In this order, so that the first wrong name is the one that is told.
    const Subjects hole = subjects_of(names.feature(want.hole, {list, "hole", want.line}));
    book.add(hole, subjects_of(names.feature(want.*inner, {list, key, want.line})));
  }
  return book;
}

template <typename Want>
PairBook hole_and_shaft_book(const Names& names, std::string_view list,
                             const std::vector<Want>& wants) {
  return in_hole_book(names, list, wants, "shaft", &Want::shaft);
}

template <typename Want>
PairBook face_book(const Names& names, std::string_view list, const std::vector<Want>& wants) {
  PairBook book(Order::either);
  for (const Want& want : wants) {
    const Entry entry{list, "between", want.line};
    book.add(part_or_face(names, want.a, entry), part_or_face(names, want.b, entry));
  }
  return book;
}

// Sizes of the threads by which parts are set.
std::map<OccurrenceId, std::string> set_threads(const DeclaredJob& declared) {
  std::map<OccurrenceId, std::string> sizes;
  for (const Adjust& adjust : declared.job->adjust) {
    if (adjust.thread) {
      const Entry entry{"adjust", "part", adjust.line};
      for (const OccurrenceId one : declared.names.part(adjust.part, entry).occurrences) {
        sizes.emplace(one, *adjust.thread);
      }
    }
  }
  return sizes;
}

PairBook part_book(const Names& names, Entry entry, const std::vector<AllowedOverlap>& allowed) {
  PairBook book(Order::either);
  for (const AllowedOverlap& overlap : allowed) {
    entry.line = overlap.line;
    const auto [a, b] = names.two_parts(overlap.a, overlap.b, entry);
    book.add(subjects_of(a), subjects_of(b));
  }
  return book;
}

// What the book says of every seat's two features, in the order of the seats.
template <typename Want, typename Seat, typename Ref>
std::vector<const Want*> each(const Job& job, std::string_view list, const PairBook& book,
                              const std::vector<Want>& wants, const std::vector<Seat>& seats,
                              Ref Seat::*first, Ref Seat::*second) {
  std::vector<const Want*> found;
  found.reserve(seats.size());
  for (const Seat& seat : seats) {
    found.push_back(only(job, list, wants, book.find(seat.*first, seat.*second)));
  }
  return found;
}

void declare_fits(DeclaredJob& declared) {
  const Job& job = *declared.job;
  const Seats& seats = declared.look->seats;
  const PairBook book = hole_and_shaft_book(declared.names, "fits", job.fits);
  declared.radial_fits =
      each(job, "fits", book, job.fits, seats.radial, &RadialSeat::hole, &RadialSeat::shaft);
  declared.thread_fits =
      each(job, "fits", book, job.fits, seats.threads, &Thread::hole, &Thread::screw);
  const PairBook screws =
      in_hole_book(declared.names, "threads", job.threads, "screw", &ThreadWant::screw);
  declared.thread_wants =
      each(job, "threads", screws, job.threads, seats.threads, &Thread::hole, &Thread::screw);
  declared.width_fits =
      each(job, "fits", book, job.fits, seats.width, &WidthSeat::slot, &WidthSeat::key);
  const PairBook tapers = hole_and_shaft_book(declared.names, "tapers", job.tapers);
  declared.taper_wants =
      each(job, "tapers", tapers, job.tapers, seats.taper, &TaperSeat::hole, &TaperSeat::shaft);
}

void declare_axial(DeclaredJob& declared) {
  const Job& job = *declared.job;
  const Seats& seats = declared.look->seats;
  const PairBook wants = face_book(declared.names, "wants", job.axial);
  declared.axial_wants =
      each(job, "wants", wants, job.axial, seats.axial, &AxialSeat::a, &AxialSeat::b);
  const PairBook gaps = face_book(declared.names, "measured", job.measured_gaps);
  declared.axial_gaps =
      each(job, "measured", gaps, job.measured_gaps, seats.axial, &AxialSeat::a, &AxialSeat::b);
}

// Gears drawn as plain blanks share what their teeth reach into each other: the two addenda.
std::vector<AllowedOverlap> overlaps_of_meshes(const Job& job) {
  std::vector<AllowedOverlap> overlaps;
  for (const Mesh& mesh : job.meshes) {
    const ToothForm form{mesh.module.in_mm(), mesh.pressure_angle_deg, mesh.helix_angle_deg};
    const auto addendum = [&form](const MeshGear& gear) {
      const GearCircles circles = gear_circles(form, gear.teeth);
      return 0.5 * (gear.tip_diameter ? gear.tip_diameter->in_mm() - circles.reference_mm
                                      : circles.tip_mm - circles.reference_mm);
    };
    overlaps.push_back({mesh.a.part, mesh.b.part, "gears in mesh drawn as plain blanks",
                        Length::mm(std::max(0.0, addendum(mesh.a) + addendum(mesh.b))), mesh.line});
  }
  return overlaps;
}

void tell_contacts(DeclaredJob& declared, const PairBook& book) {
  const std::vector<Contact>& contacts = declared.look->fouls.contacts;
  declared.contact_told.resize(contacts.size(), false);
  for (std::size_t i = 0; i < contacts.size(); ++i) {
    if (!book.find(contacts[i].a, contacts[i].b).empty()) {
      declared.contact_told[i] = true;
    }
  }
}

void declare_meshes(DeclaredJob& declared) {
  declared.mesh_overlaps =
      std::make_shared<const std::vector<AllowedOverlap>>(overlaps_of_meshes(*declared.job));
  const PairBook book = part_book(declared.names, {"meshes", "part", 0}, *declared.mesh_overlaps);
  const std::vector<Foul>& fouls = declared.look->fouls.found;
  const auto found =
      each(*declared.job, "meshes", book, *declared.mesh_overlaps, fouls, &Foul::a, &Foul::b);
  for (std::size_t i = 0; i < fouls.size(); ++i) {
    const AllowedOverlap*& allowed = declared.foul_allowed[i];
    allowed = allowed == nullptr ? found[i] : allowed;
  }
  tell_contacts(declared, book);
}

void declare_allowed(DeclaredJob& declared) {
  const Job& job = *declared.job;
  const PairBook book = part_book(declared.names, {"allow", "parts", 0}, job.allowed);
  declared.foul_allowed =
      each(job, "allow", book, job.allowed, declared.look->fouls.found, &Foul::a, &Foul::b);
  const double same_mm = declared.look->settings.seats.same_length_mm;
  for (const AxialSeat& seat : declared.look->seats.axial) {
    // An allowance speaks of overlap only; a seat with a gap leaves it unused.
    declared.axial_allowed.push_back(
        seat.gap < -same_mm
            ? only(job, "allow", job.allowed, book.find(seat.a.occurrence, seat.b.occurrence))
            : nullptr);
  }
  tell_contacts(declared, book);
}

template <typename Seat, typename Ref>
void add_job_fits(const std::vector<const FitWant*>& fits, const std::vector<Seat>& seats,
                  Ref Seat::*first, Ref Seat::*second, std::set<Subject>& spoken_of) {
  for (std::size_t i = 0; i < seats.size(); ++i) {
    if (fits.at(i) != nullptr) {
      spoken_of.insert({subject_of(seats[i].*first), subject_of(seats[i].*second)});
    }
  }
}

// Features whose size the job itself speaks of: there it wins over what the model states.
std::set<Subject> spoken_of(const DeclaredJob& declared) {
  std::set<Subject> all;
  for (const auto& [subject, want] : declared.sizes) {
    all.insert(subject);
  }
  const Seats& seats = declared.look->seats;
  add_job_fits(declared.radial_fits, seats.radial, &RadialSeat::hole, &RadialSeat::shaft, all);
  add_job_fits(declared.thread_fits, seats.threads, &Thread::hole, &Thread::screw, all);
  add_job_fits(declared.width_fits, seats.width, &WidthSeat::slot, &WidthSeat::key, all);
  return all;
}

template <typename Seat, typename Ref>
void add_stated_fits(SemanticWants& wants, const std::vector<Seat>& seats, Ref Seat::*hole,
                     Ref Seat::*shaft, std::vector<const FitWant*>& fits) {
  for (std::size_t i = 0; i < seats.size(); ++i) {
    const auto stated_hole = wants.sizes.find(subject_of(seats[i].*hole));
    const auto stated_shaft = wants.sizes.find(subject_of(seats[i].*shaft));
    if (fits.at(i) == nullptr && stated_hole != wants.sizes.end() &&
        stated_shaft != wants.sizes.end()) {
      fits[i] = &wants.fits.emplace_back(stated_fit(stated_hole->second, stated_shaft->second));
    }
  }
}

void declare_stated(DeclaredJob& declared) {
  const auto wants = std::make_shared<SemanticWants>();
  declared.semantic = wants;
  const Model& model = declared.look->model;
  if (model.semantic_sizes.empty()) {
    return;
  }
  wants->left_to_job = spoken_of(declared);
  std::map<ProductId, std::vector<OccurrenceId>> places;
  for (OccurrenceId i; i < model.occurrences.size(); ++i) {
    places[model.occurrences[i].product].push_back(i);
  }
  for (const SemanticSize& size : model.semantic_sizes) {
    if (!is_usable(size)) {
      continue;
    }
    const StatedWant want = stated_want(size);
    for (const OccurrenceId occurrence : places[*size.product]) {
      for (const ProductFeatureRef& feature : size.features) {
        const Subject subject = subject_of({occurrence, feature.kind, feature.index});
        if (!wants->left_to_job.contains(subject)) {
          wants->sizes.emplace(subject, want);
        }
      }
    }
  }
  const Seats& seats = declared.look->seats;
  add_stated_fits(*wants, seats.radial, &RadialSeat::hole, &RadialSeat::shaft,
                  declared.radial_fits);
  add_stated_fits(*wants, seats.width, &WidthSeat::slot, &WidthSeat::key, declared.width_fits);
}

}  // namespace

void refuse_second(const Job& job, std::string_view list, const std::optional<JobLine>& first,
                   const std::optional<JobLine>& second) {
  throw Error(ErrorCode::bad_input, entry_place(job, list, second),
              fmt::format("it speaks of the same as {}", line_text(first)),
              "keep one of the two entries");
}

Error::Where entry_place(const Job& job, std::string_view list,
                         const std::optional<JobLine>& line) {
  return {line && !line->file.empty() ? line->file : job.file,
          line ? fmt::format("line {}, {}", line->number, list) : std::string(list)};
}

std::string line_text(const std::optional<JobLine>& line) {
  if (!line) {
    return "an earlier entry";
  }
  return line->file.empty() ? fmt::format("the entry in line {}", line->number)
                            : fmt::format("the entry in {}, line {}", line->file, line->number);
}

DeclaredJob declare(const Job& written, const Look& look) {
  DeclaredJob declared{
      &written, &look, Names(written, look.model), {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {},
      {},       {}};
  JobOfWhatArrived arrived = job_of_what_arrived(written, look.model, declared.names);
  declared.lost = std::move(arrived.lost);
  if (!declared.lost.empty() || arrived.job.parts.size() != written.parts.size()) {
    declared.kept = std::make_shared<const Job>(std::move(arrived.job));
    declared.job = declared.kept.get();
  }
  const Job& job = *declared.job;
  require_names(job, look.model, declared.names);
  declared.parts = declare_parts(job, declared.names, look.model.occurrences.size());
  declared.measured = declare_features(job, declared.names, "measured", job.measured);
  declared.sizes = declare_features(job, declared.names, "sizes", job.sizes);
  declare_fits(declared);
  declared.screw_threads = screw_threads(look, declared.thread_wants, set_threads(declared));
  declare_axial(declared);
  declare_allowed(declared);
  declare_meshes(declared);
  declare_stated(declared);
  return declared;
}

PartState state_of(const DeclaredJob& declared, OccurrenceId occurrence) {
  const JobPart* part = declared.parts.at(occurrence);
  return part == nullptr ? PartState::as_found : part->state;
}

Drawn drawn_at(const DeclaredJob& declared, OccurrenceId occurrence) {
  const JobPart* part = declared.parts.at(occurrence);
  return part == nullptr ? Drawn::at_the_size_wanted : part->drawn;
}

}  // namespace spotblue
