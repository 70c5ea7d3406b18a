#include "command/table.hpp"

#include <algorithm>
#include <array>

namespace spotblue::command {
namespace {

constexpr const char* kUnitShown = "mm|in";
constexpr Option kOutput{"--output", Takes::path, "PATH",
                         "write to a file in place of the terminal"};

constexpr Option kAllowOutsideJob{
    "--allow-outside", Takes::nothing, "",
    "take the model also from outside the job file's folder and what is below it"};

constexpr std::array<Use, 1> kModelUses{{
    {"MOCKUP.toml OUT.step", "make STEP solids and an assembly from caliper sizes"},
}};

constexpr std::array<Option, 1> kModelOptions{{
    {"--allow-outside", Takes::nothing, "",
     "include files also from outside the mock-up's folder and what is below it"},
}};

constexpr std::array<Use, 1> kLookUses{{
    {"FILE.step", "what is in the file and what fits what, as modelled"},
}};
constexpr Option kSeconds{
    "--seconds", Takes::positive, "N",
    "end the look after so long, with what was found, and judging a quarter later; what was not "
    "looked at is undecided. Without it reading may take 120 s, and what comes after as long "
    "again"};
constexpr Option kMemory{
    "--memory", Takes::positive, "MB",
    "end it likewise once it has taken so much, in 10^6 bytes, or all that the machine has left; "
    "the process that reads the file may take as much again. 6000 without it"};

constexpr Option kAcceptPartial{"--accept-partial", Takes::nothing, "",
                                "take what arrived of a file that declares more or is damaged; "
                                "what is missing is undecided, as "
                                "is all of a file with an entity that could not be read"};

constexpr std::array<Option, 6> kLookOptions{{
    {"--unit", Takes::unit, kUnitShown,
     "show lengths in mm or inches; without it, as the file is written"},
    {"--json", Takes::nothing, "",
     "everything found, as JSON by tests/reference/schema-2.json, always in mm"},
    {"--accept-partial", Takes::nothing, "",
     "show what arrived even when the file declares more; the notes say what is missing"},
    kSeconds,
    kMemory,
    kOutput,
}};

constexpr std::array<Use, 1> kDraftUses{{
    {"FILE.step", "write a job file with every part and seat found"},
}};
constexpr std::array<Option, 5> kDraftOptions{{
    {"--unit", Takes::unit, kUnitShown,
     "the job file's unit; without it, as the STEP file is written"},
    {"--accept-partial", Takes::nothing, "",
     "draft from what arrived even when the file declares more"},
    kSeconds,
    kMemory,
    {"--output", Takes::path, "PATH",
     "write to a new file in place of the terminal; one that exists is kept and the draft refused"},
}};

constexpr std::array<Use, 2> kCheckUses{{
    {"JOB.toml", "judge every seat, screw and foul by what the job file wants"},
    {"FILE.step", "the same by the sizes that the file, AP242 or .xbf, states on its faces"},
}};
constexpr std::array<Option, 9> kCheckOptions{{
    {"--unit", Takes::unit, kUnitShown,
     "show lengths in mm or inches; without it, as the job file is written"},
    {"--json", Takes::nothing, "",
     "findings and all that was found, as JSON by tests/reference/schema-2.json, always in mm"},
    kAcceptPartial,
    kSeconds,
    kMemory,
    kAllowOutsideJob,
    kOutput,
    {"--group", Takes::nothing, "",
     "show first what the parts do to each other: which are one body, which turn, and every fit's "
     "sizes as made, assembled and running"},
    {"--with-sizes", Takes::path, "OUT.step",
     "write a copy of the model, as AP242, that states the classes and limits of the job on the "
     "faces they are for; what was written is said on stderr"},
}};

constexpr std::array<Use, 1> kCompareUses{{
    {"JOB.toml JOB.toml ...", "put plans for one repair side by side"},
}};
constexpr std::array<Option, 6> kCompareOptions{{
    {"--unit", Takes::unit, kUnitShown,
     "show lengths in mm or inches; without it, as the first job file is written"},
    {"--accept-partial", Takes::nothing, "", "of each plan's model, as of check"},
    {"--seconds", Takes::positive, "N", "for each plan, as of check"},
    {"--memory", Takes::positive, "MB", "for each plan, as of check"},
    kAllowOutsideJob,
    kOutput,
}};

constexpr std::array<Use, 1> kLibraryUses{{
    {"MANIFEST", "a whole shelf of STEP files, and what each claims to be"},
}};
constexpr std::array<Option, 13> kLibraryOptions{{
    {"--database", Takes::path, "PATH", "keep the results there; several runs may share it"},
    {"--unit", Takes::unit, kUnitShown,
     "unit of bare numbers in a CSV manifest and of the text; mm without it"},
    {"--uncertainty", Takes::number, "MM", "of the sizes in the files, in mm (k = 2)"},
    {"--workers", Takes::count, "N", "processes that read files; as many as cores without it"},
    {"--scheduler", Takes::text, "ADDRESS",
     "hand the files to a Dask cluster: tcp://127.0.0.1:8786"},
    {"--seconds", Takes::positive, "N", "time one file may take; 120 without it"},
    {"--memory", Takes::positive, "MB",
     "memory one file may take, and no more than its worker's share of what the machine has left; "
     "6000 without it"},
    {"--every", Takes::nothing, "", "list what conforms too"},
    {"--csv", Takes::path, "PATH",
     "write the rows as CSV as well; \"-\" in place of the text, here and below"},
    {"--json", Takes::path, "PATH", "as JSON"},
    {"--junit", Takes::path, "PATH", "as JUnit's XML"},
    {"--html", Takes::path, "PATH", "as a page"},
    {"--progress", Takes::nothing, "", "show progress even where it is no terminal"},
}};

constexpr std::array<Use, 1> kWhichUses{{
    {"DATABASE", "which parts of a shelf fit, or would after a cut"},
}};
constexpr std::array<Option, 8> kWhichOptions{{
    {"--hole", Takes::text, "SIZE",
     "the hole's size: 38.012; \"38 H7\" or \"38.00 to 38.02\" when it is not measured yet"},
    {"--hole-fit", Takes::text, "FIT",
     "the fit in it: H7/s6, \"38 H7/s6\", FN2, or limits of the clearance \"0.02 to 0.05\"; "
     "a hole's class in capitals, a shaft's in small letters"},
    {"--shaft", Takes::text, "SIZE", "the shaft's size, likewise"},
    {"--shaft-fit", Takes::text, "FIT", "the fit on it, likewise"},
    {"--cut", Takes::number, "MM", "metal that may be taken off each seat, on the diameter, in mm"},
    {"--uncertainty", Takes::number, "MM", "of the sizes on the shelf, in mm (k = 2)"},
    {"--unit", Takes::unit, kUnitShown, "unit of bare numbers and of the text; mm without it"},
    {"--json", Takes::nothing, "", "as JSON, always in mm"},
}};

constexpr std::array<Use, 1> kMaterialsUses{{
    {"", "which materials jobs may name, and what is taken of each"},
}};
constexpr std::array<Option, 2> kMaterialsOptions{{
    {"--unit", Takes::unit, kUnitShown, "show them in N and mm, or in pounds and inches"},
    kOutput,
}};

constexpr std::array<Option, 2> kProgramOptions{{
    {"--help", Takes::nothing, "", "what the program or a verb takes, with examples"},
    {"--version", Takes::nothing, "", "its version, and that of Open CASCADE"},
}};

constexpr std::array<Verb, 8> kVerbs{{
    {"model", DoneBy::kernel, "make STEP solids from caliper sizes", kModelUses, 2, 2,
     R"(The mock-up file lists parts by their steps, bores, keyseats and holes, in mm or inches, and where
each stands. OUT.step appears whole or not at all; an older one is replaced. Files that the mock-up
includes lie in its folder or below it.
)",
     kModelOptions, "Ends with 0 when the solids are written, 2 for bad input.\n",
     R"(spotblue model press.toml press.step
spotblue look press.step
)"},
    {"look", DoneBy::kernel, "list parts, centre lines, seats, screws and fouls", kLookUses, 1, 1,
     R"(Lists the parts, then each centre line with the seats on it (hole and shaft, clearance positive,
interference negative, how far out of line), screws in tapped holes, keys, and fouls. Nothing is
judged; that takes a job file (spotblue draft, spotblue check).

FILE may also be Open CASCADE's own .brep or .xbf; its content tells. A .brep names neither unit nor
parts: mm are taken, and every solid is a part.
)",
     kLookOptions,
     R"(Ends with 0 when the file is looked at, 2 for bad input, 3 when something was not looked at: for want
of time or memory, because it did not arrive, or because it bounds no solid.
)",
     R"(spotblue look press.step
spotblue look press.step --unit in
spotblue look press.step --json --output press.json
spotblue look press.step --seconds 5
)"},
    {"draft", DoneBy::kernel, "write a job file with every seat found, to be filled in", kDraftUses,
     1, 1,
     R"(The job file is ready for spotblue check as it stands; everything in it is undecided until you say
what each fit is for. Fits that the modelled sizes would satisfy stand beside each seat as comments.
)",
     kDraftOptions,
     R"(Ends with 0 when the draft is written, 2 for bad input, 3 when it is written and something was not
looked at, as with spotblue look: comments at its head say what.
)",
     R"(spotblue draft press.step
spotblue draft press.step --output press-job.toml
)"},
    {"check", DoneBy::kernel, "judge each fit by what a job file wants or the STEP file states",
     kCheckUses, 1, 1,
     R"(Each finding says conforming, nonconforming or undecided, what is wanted and found, the margin, the
standard's clause and one line of advice. The nonconforming ones come first. The model that a job
names lies in the job file's folder or below it.

Sizes with a class or limits that the STEP file states count wherever the job file says nothing; a
hole and a shaft that both have one make a wanted fit.
)",
     kCheckOptions,
     R"(Ends with 0 when all is conforming, 1 when something is nonconforming, 3 when nothing is
nonconforming but something is undecided, 2 for bad input.
)",
     R"(spotblue check press-job.toml
spotblue check press-job.toml --json --output findings.json
spotblue check press-job.toml --with-sizes press-with-sizes.step
spotblue check press-with-sizes.step
)"},
    {"compare", DoneBy::kernel, "put plans for one repair side by side", kCompareUses, 2, 1000,
     R"(Every plan is checked. A row for each finding that differs or does not conform, with outcome and
margin for each plan; then what each plan takes: new parts, stock, cuts in parts that have no
second and the metal they take off ([[cuts]]), press fits, ways in. The line before the last says
which plan stands, and what would change that: one without nonconforming findings, of these one
without undecided ones, of these the one with the widest least margin. The last line has what each
costs, and by what one of them comes first.
)",
     kCompareOptions,
     R"(Ends with 0 when a plan has no nonconforming finding, 1 when none is free of them, 2 for bad input, 3
when something of a plan was not looked at, for want of time or memory or because it did not arrive, so
that the best is not known.
)",
     "spotblue compare plan-a.toml plan-b.toml plan-c.toml\n"},
    {"library", DoneBy::python, "judge a whole shelf of files by what each claims to be",
     kLibraryUses, 1, 1,
     R"(The manifest is CSV with a line of columns, or TOML with [[claim]] tables of the same keys; file
names are relative to it. One row is one claim:

  file,feature,size,class,lower,upper,tolerance,material,notes
  pulley.step,bore 44,44,H7,,,,grey iron,from the left rack
  stud.step,outside 30,30,f7
  stud.step,length 120,120,,,,+0/-0.2
  press.step,,,,,,,,only the file: does it read, is it closed, does anything foul

  feature       a name as spotblue look shows it, "Wheel: bore", "Stud: journal"; or by kind and
                size: "bore 44", "Wheel: bore 44 @ 12", "outside", "slot 8", "length 120" (between
                faces that look away from each other)
  fit           in place of feature: "Wheel: bore with Stud: journal", class "H7/s6" or "FN2", or
                lower and upper of the clearance
  size, class, lower, upper, tolerance
                "1 5/16 in" or 44; H7 or RC4; two limits; or "0.05", "+0.025/0"
  solids        how many solids the file must hold
  coaxial_with, within
                the feature's axis must lie so near to that of another
  material      must be in the table, and must be what the file states, where it states one

A folder in place of a manifest is looked through, and a manifest drafted in it.

Results are kept beside the manifest; what has not changed is not looked at again, and a run that
was killed goes on where it was. A file that crashes, hangs or takes too much costs one row.
)",
     kLibraryOptions,
     R"(Ends with 0 when all is conforming, 1 when something is nonconforming or a file is bad, 3 when
nothing is nonconforming but something is undecided, 2 for bad input.
)",
     R"(spotblue library shelf/
spotblue library shelf/manifest.csv --html shelf.html
spotblue library shelf/manifest.csv --junit shelf.xml --workers 4
)"},
    {"which", DoneBy::python, "find the parts of the shelf that fit", kWhichUses, 1, 1,
     R"(DATABASE is what spotblue library has filled. Say what is there and the fit that is wanted; both a
hole and a shaft ask for a part that goes between them, as a bush between hub and journal.

Best first: no cut before a cut, a wide margin before a narrow one, a small cut before a large one.
)",
     kWhichOptions,
     "Ends with 0 when something fits, 1 when nothing does, 3 when nothing surely does, 2 for bad "
     "input.\n",
     R"(spotblue which shelf/manifest.shelf.db --hole 38.012 --hole-fit H7/s6
spotblue which shelf/manifest.shelf.db --hole 38.012 --hole-fit H7/s6 --cut 0.5
spotblue which shelf/manifest.shelf.db --hole 38 --hole-fit H7/s6 --shaft 29 --shaft-fit H8/f7
)"},
    {"materials", DoneBy::kernel, "list the materials that jobs may name", kMaterialsUses, 0, 0,
     R"(Stiffness, expansion and strength are typical or least values: they serve to compare and to warn. A
material that is not there goes into [[materials]] of the job.
)",
     kMaterialsOptions, "Ends with 0.\n",
     R"(spotblue materials
spotblue materials --unit in
)"},
}};

}  // namespace

const char* const kProgramSummary =
    "what fits what in a STEP assembly, how, and whether that is what you need";

const char* const kProgramExample =
    R"(From sizes on paper to a judged plan:
  spotblue model press.toml press.step
  spotblue look press.step
  spotblue draft press.step --output press-job.toml
  ... say in press-job.toml what each fit is for ...
  spotblue check press-job.toml
)";

const char* const kProgramEnds =
    R"(Ends with 0 when all is well, 2 for bad input (one line says what and where); check and library
also end with 1 when something is nonconforming and 3 when nothing is but something is undecided; look,
draft and compare end with 3 when something was not looked at or did not arrive.
)";

std::span<const Verb> verbs() { return kVerbs; }

const Verb* find_verb(std::string_view name) {
  const auto* const found = std::find_if(kVerbs.begin(), kVerbs.end(),
                                         [&](const Verb& verb) { return name == verb.name; });
  return found == kVerbs.end() ? nullptr : &*found;
}

std::span<const Option> program_options() { return kProgramOptions; }

}  // namespace spotblue::command
