#include "cli/commands.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>

#include "joint/documents/text_table.h"

namespace sheerlap {
namespace {

const char* const options_help =
    "Options, before or after the command\n"
    "  --units mm|in  unit of lengths in reports and CSV files; if not given, that of\n"
    "                 the joint file. In inches, running dimensions are fractions,\n"
    "                 the rest decimals. JSON is always metric.\n"
    "  --json         print the result as JSON and nothing else; `job` then writes\n"
    "                 documents only if --out says where\n"
    "  --paper a4|letter\n"
    "                 with `job`: the paper of the sheets, with A3 or ANSI B for the\n"
    "                 drawing; if not given, A4 in mm and Letter in inches\n"
    "  --explain      close the report with the reasons of its figures: formula, "
    "numbers\n"
    "                 put in, value, source and where it holds; --explain MARK, with\n"
    "                 schedule, strength or job, tells of that one hole\n"
    "  --readings FILE\n"
    "                 with `fit`, `adhesive`, `schedule` and `strength`: answer for "
    "the\n"
    "                 boat whose gaps FILE holds\n"
    "  --state dry|held|after\n"
    "                 with --readings: the state that counts; if not given, the "
    "latest\n"
    "  --options      with `strength`: compare all sizes of the fastener in the "
    "tables,\n"
    "                 and the adhesives of [[adhesive_option]]\n"
    "  --boats N      with `tolerance`: how many boats to make up, in place of the "
    "joint\n"
    "                 file's\n"
    "  --seed N       with `tolerance`: which boats, in place of the joint file's\n"
    "  --threads N    with `tolerance`: how many work at once; if not given, as many "
    "as\n"
    "                 the machine has. The result is the same for any number.\n"
    "  --record DB    with `tolerance`: boats built, for errors with from_record = "
    "true;\n"
    "                 with `job`: their charts stand in the page, joint.html\n"
    "  --quiet        print the verdict line only\n"
    "  --out DIR      with `job`: the folder for the documents; if not given, the\n"
    "                 joint file's name with \"-joint\" in place of its ending, in "
    "the\n"
    "                 current folder\n"
    "  --version      print the version\n"
    "  --help         print this, or the help of the command named\n";

const char* const exit_help =
    "Exit status\n"
    "  0  done; every check passes or only warns\n"
    "  1  done, documents written; a check fails\n"
    "  2  the input is wrong; nothing was written\n"
    "  3  a file could not be read or written\n";

}  // namespace

const std::vector<CommandWords>& all_commands() {
  static const std::vector<CommandWords> commands{
      {Command::New, "new", "DIR", "write a commented joint file, ready to run",
       "Makes the folder DIR and writes a joint file with its sheer table into it. "
       "A file that is there already is never written over."},
      {Command::Check, "check", "JOINT.toml", "is the input right?",
       "Reads the joint file and its table, tries every command on it, and tells what "
       "was understood. All that is wrong is listed at once, with file and line."},
      {Command::Fit, "fit", "JOINT.toml",
       "does the lid go over the box all the way round?",
       "The gap between hull and lip all round and down the lap, held against the "
       "adhesive's gap window. Needs [adhesive]."},
      {Command::Adhesive, "adhesive", "JOINT.toml",
       "volume in the joint, beads, amount to lay, time",
       "The volume between the faces, the beads to lay, what one boat takes with "
       "squeeze-out, waste and nozzles, and with [shop] the time from first bead to "
       "last fastener. Needs [adhesive]."},
      {Command::Layout, "layout", "JOINT.toml",
       "where the fasteners go, and why each one is there",
       "The fewest holes that keep every limit, as evenly spaced as can be. A stretch "
       "whose limit cannot be kept is bridged, and said so."},
      {Command::Schedule, "schedule", "JOINT.toml",
       "the drilling schedule, side by side, jig by jig",
       "For each hole: running girth, pitch, chord, X Y Z, bit direction, edge "
       "distances, gap, fastener length, drill sizes and jig."},
      {Command::Strength, "strength", "JOINT.toml",
       "what bond and fasteners carry against what is asked",
       "What is used of the bond, place by place, and of the fasteners alone, hole by "
       "hole, under the loads given; how load is shared, what clamping takes, and what "
       "published rules ask. Needs [loads], [adhesive], and the strengths of laminates "
       "and adhesive. With --explain S14 all that is known of one hole."},
      {Command::Order, "order", "JOINT.toml", "what to buy for the run of boats",
       "Packs and boxes rounded up once for the run, every allowance on its own line. "
       "Needs [adhesive] and [order]."},
      {Command::Tolerance, "tolerance", "JOINT.toml",
       "how many boats in a hundred will fit",
       "Makes up boats by the errors of the process, seats the lid on each in its best "
       "place, and tells how many go on, where they are tight or wide, what the run "
       "takes, and which error drives what; every figure with the range that its "
       "sample "
       "leaves. Ctrl-C stops it and tells what is done so far. Needs [tolerance] with "
       "each [[error]], and [adhesive]; with [order] also what the run takes."},
      {Command::Job, "job", "JOINT.toml",
       "all of these but tolerance, every document into a folder",
       "Works out everything the joint file has the tables for, prints the summary and "
       "writes the reports, CSV files and result.json into the folder of --out: all of "
       "them or none. Other files there are left alone."},
      {Command::Record, "record", "WORD DB", "boats built: add, list, show, chart",
       "Keeps the gap readings of boats built in one file and charts them: see "
       "sheerlap record --help."}};
  return commands;
}

const CommandWords& words_of(Command command) {
  const auto& all = all_commands();
  const auto found =
      std::find_if(all.begin(), all.end(),
                   [&](const CommandWords& words) { return words.command == command; });
  assert(found != all.end());
  return *found;
}

std::string help_text() {
  std::string text =
      "sheerlap sets out the joint where a deck's lip laps the hull of a GRP boat\n\n"
      "  sheerlap COMMAND JOINT.toml [options]\n\n"
      "Commands\n";
  for (const CommandWords& words : all_commands())
    text +=
        fmt::format("  {:<20} {}\n", words.name + " " + words.argument, words.answers);
  return text + "\n" + options_help + "\n" + exit_help;
}

std::string help_text(Command command) {
  const CommandWords& words = words_of(command);
  return fmt::format("sheerlap {} {} [options]\n\n{}\n{}\n{}", words.name,
                     words.argument, wrapped(words.more), options_help, exit_help);
}

}  // namespace sheerlap
