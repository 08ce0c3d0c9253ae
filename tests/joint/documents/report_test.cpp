#include "joint/documents/report.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <sstream>

#include "joint/documents/cautions.h"
#include "joint/documents/text_table.h"
#include "tests/joint/documents/sample_job.h"

namespace sheerlap {
namespace {

const std::vector<Subject> subjects{
    Subject::Input,    Subject::Fit,      Subject::Adhesive, Subject::Layout,
    Subject::Schedule, Subject::Strength, Subject::Order,    Subject::Summary};

std::vector<std::string> lines_of(const std::string& text) {
  std::istringstream stream(text);
  std::vector<std::string> lines;
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

/// The text on one line.
std::string unwrapped(std::string text) {
  std::replace(text.begin(), text.end(), '\n', ' ');
  return text;
}

ReportStyle style_in(LengthUnit unit) { return {unit, std::nullopt}; }

BOOST_AUTO_TEST_SUITE(report_suite)

BOOST_AUTO_TEST_CASE(no_line_of_any_report_is_wider_than_100_characters) {
  for (const Job& job : {sample_job(), wide_job()})
    for (const LengthUnit unit : {LengthUnit::Millimetres, LengthUnit::Inches})
      for (const Subject subject : subjects)
        for (const std::string& line : lines_of(report(subject, job, style_in(unit))))
          BOOST_TEST(width_of(line) <= 100, line);
}

BOOST_AUTO_TEST_CASE(reports_of_a_usual_boat_keep_to_80_characters) {
  for (const LengthUnit unit : {LengthUnit::Millimetres, LengthUnit::Inches})
    for (const Subject subject : subjects)
      for (const std::string& line :
           lines_of(report(subject, sample_job(), style_in(unit))))
        BOOST_TEST(width_of(line) <= 80, line);
}

BOOST_AUTO_TEST_CASE(the_verdict_is_the_second_line_of_every_report) {
  for (const Subject subject : subjects)
    BOOST_TEST(
        lines_of(report(subject, sample_job(), {}))[1] ==
        "STOP: 1 of 3 checks fails, 1 warns; see the list before you cut or drill.");
}

BOOST_AUTO_TEST_CASE(every_report_closes_with_the_cautions) {
  for (const Subject subject : subjects) {
    const std::string text = report(subject, sample_job(), {});
    BOOST_TEST(holds(text, "\nCautions\n"));
    BOOST_TEST(text.ends_with(wrapped("- " + cautions().back(), text_width, 2)));
  }
}

BOOST_AUTO_TEST_CASE(the_cautions_name_every_hazard_and_what_the_figures_are_not) {
  std::string all;
  for (const std::string& paragraph : cautions()) all += paragraph + " ";
  for (const char* word :
       {"dust", "styrene", "methacrylate", "isocyanate", "eye protection", "respirator",
        "ignition", "does not certify", "naval architect", "class or flag authority",
        "data sheet"})
    BOOST_TEST(holds(all, word), word);
}

BOOST_AUTO_TEST_CASE(a_date_is_printed_only_if_given) {
  ReportStyle style;
  style.date = "2024-05-01";
  const std::string dated = report(Subject::Summary, sample_job(), style);
  BOOST_TEST(lines_of(dated)[1] == "2024-05-01");
  BOOST_TEST(!holds(report(Subject::Summary, sample_job(), {}), "2024"));
}

BOOST_AUTO_TEST_CASE(the_same_job_gives_the_same_bytes) {
  const auto first = documents(sample_job(), {});
  const auto second = documents(sample_job(), {});
  BOOST_TEST_REQUIRE(first.size() == second.size());
  for (std::size_t i = 0; i < first.size(); ++i) {
    BOOST_TEST(first[i].name == second[i].name);
    BOOST_TEST(first[i].text == second[i].text);
  }
}

BOOST_AUTO_TEST_CASE(a_job_writes_only_documents_of_known_names) {
  const auto& names = document_names();
  const auto files = documents(sample_job(), {});
  BOOST_TEST(files.size() == names.size());
  for (const Document& file : files)
    BOOST_TEST((std::find(names.begin(), names.end(), file.name) != names.end()),
               file.name);
}

BOOST_AUTO_TEST_CASE(reasons_stand_after_a_report_only_if_they_are_asked_for) {
  ReportStyle style;
  BOOST_TEST(!holds(report(Subject::Strength, sample_job(), style), "\nReasons\n"));
  style.explain = true;
  const std::string text = report(Subject::Strength, sample_job(), style);
  BOOST_TEST(holds(text, "\nReasons\n"));
  BOOST_TEST(holds(text, "= 5/1000*250\n"));
  BOOST_TEST(text.find("\nReasons\n") < text.find("\nCautions\n"));
}

BOOST_AUTO_TEST_CASE(a_schedule_says_where_each_length_runs) {
  const std::string text = unwrapped(report(Subject::Schedule, sample_job(), {}));
  for (const char* words :
       {"outer face 28 mm below the sheer", "bow datum", "hull's outer face",
        "rounded to 1 mm", "Starboard", "Port", "Transom"})
    BOOST_TEST(holds(text, words), words);
}

BOOST_AUTO_TEST_CASE(nothing_in_a_report_in_inches_is_in_millimetres) {
  Job job = sample_job();
  job.schedule->fastener.size = "#10";
  for (const Subject subject : subjects)
    BOOST_TEST(!holds(report(subject, job, style_in(LengthUnit::Inches)), " mm"));
}

BOOST_AUTO_TEST_CASE(bits_and_lengths_of_metric_screws_keep_their_names_in_inches) {
  const std::string text =
      unwrapped(report(Subject::Schedule, sample_job(), style_in(LengthUnit::Inches)));
  BOOST_TEST(holds(text, "the 3.9 mm pilot bit"));
  BOOST_TEST(holds(text, "the 5.3 mm bit"));
  BOOST_TEST(holds(text, "    19      5 "));  // of the kit, by length
}

BOOST_AUTO_TEST_CASE(a_schedule_says_how_deep_each_bit_goes_and_where_not_to_drill) {
  const std::string text = unwrapped(report(Subject::Schedule, sample_job(), {}));
  // derived: edge low 20 and the trim of 2
  for (const char* words :
       {"Mark the drill line 22.0 mm up", "the 3.9 mm pilot bit", "with the 5.3 mm bit",
        "DO NOT DRILL T02", "look at what is behind the hull", "use a trammel",
        "0.8 mm deep"})
    BOOST_TEST(holds(text, words), words);
}

BOOST_AUTO_TEST_CASE(a_pitch_across_an_opening_is_left_blank) {
  Job job = sample_job();
  job.perimeter.sides[0].openings.push_back(
      {"well", Length::mm(100), Length::mm(150), Length::mm(100), Length::mm(150)});
  // S02 is at 166, 90.5 from the hole before
  BOOST_TEST(holds(report(Subject::Schedule, sample_job(), {}), "166   90.5   90.4"));
  BOOST_TEST(holds(report(Subject::Schedule, job, {}), "166          90.4"));
}

BOOST_AUTO_TEST_CASE(a_girth_to_check_by_is_in_sixteenths) {
  // derived: 110 / 25.4 = 4.331, 5.29 sixteenths over 4
  const std::string text =
      report(Subject::Schedule, sample_job(), style_in(LengthUnit::Inches));
  BOOST_TEST(holds(text, "4-5/16  girth on the drill line"));
}

BOOST_AUTO_TEST_CASE(a_summary_says_what_to_buy_in_packs_boxes_and_pieces) {
  Job job = sample_job();
  job.order->lines = {{"paste", 300000, "ml", 400, 754, {}, {}},
                      {"mixer nozzle", 840, "pieces", 1, 840, {}, {}},
                      {"tapping screw ST4.8 x 19", 12800, "pieces", 100, 128, {}, {}},
                      {"tapping screw ST4.8 x 22", 90, "pieces", 100, 1, {}, {}}};
  std::string text = report(Subject::Summary, job, {});
  std::string words;
  for (const char letter : text)
    if (letter != ' ' && letter != '\n') words += letter;
  BOOST_TEST(holds(words,
                   "120boats,tobuy:754packsofpaste,840mixernozzles,128boxesof100"
                   "tappingscrewsST4.8x19,1boxof100tappingscrewsST4.8x22;"));
}

BOOST_AUTO_TEST_CASE(a_summary_leaves_out_parts_that_were_not_worked_out) {
  Job job = sample_job();
  job.adhesive.reset();
  job.order.reset();
  job.fit.reset();
  const std::string text = report(Subject::Summary, job, {});
  BOOST_TEST(holds(text, "\nlayout"));
  BOOST_TEST(!holds(text, "\nfit"));
  BOOST_TEST(!holds(text, "\norder"));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
