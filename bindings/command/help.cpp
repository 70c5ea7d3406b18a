#include "help.hpp"

namespace spotblue::command {

const char* const kProgramHelp =
    R"(spotblue: what fits what in a STEP assembly, how, and whether that is what you need

  spotblue model MOCKUP.toml OUT.step   make STEP solids from caliper sizes
  spotblue look FILE.step               list parts, centre lines, seats, screws and clashes
  spotblue draft FILE.step              write a job file with every seat found, to be filled in
  spotblue check JOB.toml               judge each fit by what the job file wants
  spotblue check FILE.step              judge by the sizes that the STEP file itself states
  spotblue compare JOB.toml JOB.toml    put plans for one repair side by side
  spotblue library MANIFEST             judge a whole shelf of files by what each claims to be
  spotblue which DATABASE               find the parts of the shelf that fit

  spotblue look --help                  what a verb takes, with examples; likewise the others
  spotblue --version

From sizes on paper to a judged plan:
  spotblue model press.toml press.step
  spotblue look press.step
  spotblue draft press.step --output press-job.toml
  ... say in press-job.toml what each fit is for ...
  spotblue check press-job.toml

Ends with 0 when all is well, 2 for bad input (one line says what and where); check and library
also end with 1 when something is nonconforming and 3 when nothing is but something is undecided.
)";

const char* const kModelHelp =
    R"(spotblue model MOCKUP.toml OUT.step: make STEP solids and an assembly from caliper sizes

The mock-up file lists parts by their steps, bores, keyseats and holes, in mm or inches, and where
each stands. OUT.step appears whole or not at all; an older one is replaced.

Example:
  spotblue model press.toml press.step
  spotblue look press.step
)";

const char* const kLookHelp =
    R"(spotblue look FILE.step: what is in the file and what fits what, as modelled

Lists the parts, then each centre line with the seats on it (hole and shaft, clearance positive,
interference negative, how far out of line), screws in tapped holes, keys, and clashes. Nothing is
judged; that takes a job file (spotblue draft, spotblue check).

  --unit mm, --unit in   show lengths in mm or inches; without it, as the file is written
  --json                 everything found, as JSON by tests/reference/schema-1.json, always in mm
  --accept-partial       show what arrived even when the file declares more; the notes say what is
                         missing
  --output PATH          write to a file in place of the terminal

Examples:
  spotblue look press.step
  spotblue look press.step --unit in
  spotblue look press.step --json --output press.json
)";

const char* const kDraftHelp =
    R"(spotblue draft FILE.step: write a job file with every part and seat found

The job file is ready for spotblue check as it stands; everything in it is undecided until you say
what each fit is for. Fits that the modelled sizes would satisfy stand beside each seat as comments.

  --unit mm, --unit in   the job file's unit; without it, as the STEP file is written
  --output PATH          write to a new file in place of the terminal; one that exists is kept and
                         the draft refused

Examples:
  spotblue draft press.step
  spotblue draft press.step --output press-job.toml
)";

const char* const kCheckHelp =
    R"(spotblue check JOB.toml: judge every seat, screw and clash by what the job file wants
spotblue check FILE.step: the same by the sizes that the file itself states on its faces (AP242)

Each finding says conforming, nonconforming or undecided, what is wanted and found, the margin, the
standard's clause and one line of advice. The nonconforming ones come first.

Sizes with a class or limits that the STEP file states count wherever the job file says nothing; a
hole and a shaft that both have one make a wanted fit.

  --unit mm, --unit in   show lengths in mm or inches; without it, as the job file is written
  --json                 findings and all that was found, as JSON by tests/reference/schema-1.json,
                         always in mm
  --output PATH          write to a file in place of the terminal
  --with-sizes OUT.step  write a copy of the model, as AP242, that states the classes and limits of
                         the job on the faces they are for; what was written is said on stderr

Ends with 0 when all is conforming, 1 when something is nonconforming, 3 when nothing is
nonconforming but something is undecided, 2 for bad input.

Examples:
  spotblue check press-job.toml
  spotblue check press-job.toml --json --output findings.json
  spotblue check press-job.toml --with-sizes press-with-sizes.step
  spotblue check press-with-sizes.step
)";

const char* const kCompareHelp =
    R"(spotblue compare JOB.toml JOB.toml ...: put plans for one repair side by side

Every plan is checked. A row for each finding that differs or does not conform, with outcome and
margin for each plan; then what each plan takes: new parts, stock, cuts in parts that have no
second and the metal they take off ([[cuts]]), press fits, ways in. The last line says which plan
has no nonconforming finding and the widest least margin, and what would change that.

  --unit mm, --unit in   show lengths in mm or inches; without it, as the first job file is written
  --output PATH          write to a file in place of the terminal

Ends with 0 when a plan has no nonconforming finding, 1 when none is free of them, 2 for bad input.

Example:
  spotblue compare plan-a.toml plan-b.toml plan-c.toml
)";

void set_help(CLI::App& app, const char* text) {
  app.set_help_flag("--help");
  app.formatter_fn([text](const CLI::App* /*app*/, const std::string& /*name*/,
                          CLI::AppFormatMode /*mode*/) { return std::string(text); });
}

}  // namespace spotblue::command
