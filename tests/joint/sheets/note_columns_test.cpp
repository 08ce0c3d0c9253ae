#include "joint/sheets/note_columns.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/sheets/read_back.h"

namespace sheerlap {
namespace {

/// What `draw` does to the first sheet of a flow.
std::string noted(const std::function<void(PdfFile&, SheetFlow&)>& draw) {
  auto bytes = pdf_bytes({"Notes"}, [&](PdfFile& file) {
    SheetFlow flow(file, small_page(Paper::A4), {"Boat", "Notes", "mm"});
    draw(file, flow);
  });
  BOOST_REQUIRE(bytes.has_value());
  return *bytes;
}

std::vector<Note> many(std::size_t count) {
  std::vector<Note> notes;
  for (std::size_t note = 0; note < count; ++note)
    notes.push_back({"", "note-" + std::to_string(note) + "- and some words more"});
  return notes;
}

BOOST_AUTO_TEST_SUITE(note_columns)

BOOST_AUTO_TEST_CASE(notes_go_down_the_first_column_and_on_into_the_next) {
  const std::string pdf = noted([](PdfFile& file, SheetFlow& flow) {
    const Box room = flow.room();
    write_notes(flow,
                {{room.left, room.top, 80, 20}, {room.left + 90, room.top, 80, 20}},
                many(6));
    BOOST_TEST(file.page_number() == 1U);
  });
  const std::string text = text_of_pdf(pdf);
  for (std::size_t note = 0; note < 6; ++note)
    BOOST_TEST(text.find("note-" + std::to_string(note) + "-") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(
    notes_that_do_not_go_in_have_sheets_of_their_own_and_none_is_lost) {
  const std::string text = text_of_pdf(noted([](PdfFile& file, SheetFlow& flow) {
    write_notes(flow, {{flow.room().left, flow.room().top, 80, 20}}, many(200));
    BOOST_TEST(file.page_number() > 1U);
  }));
  for (std::size_t note = 0; note < 200; ++note)
    BOOST_TEST(text.find("note-" + std::to_string(note) + "-") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_section_that_goes_on_in_the_next_column_says_its_heading_again) {
  std::vector<Note> notes = many(6);
  notes.front().heading = "Cautions";
  const std::string text = text_of_pdf(noted([&](PdfFile&, SheetFlow& flow) {
    const Box room = flow.room();
    write_notes(flow,
                {{room.left, room.top, 80, 24}, {room.left + 90, room.top, 80, 60}},
                notes);
  }));
  BOOST_TEST(text.find("Cautions, continued") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(the_room_below_the_notes_is_left_to_the_flow) {
  noted([](PdfFile&, SheetFlow& flow) {
    const double top = flow.room().top;
    write_notes(flow, {{flow.room().left, top, 80, 200}}, many(1));
    // derived: one line of 2.5 mm at a pitch of 1.6, and 0.8 of its height
    BOOST_TEST(std::abs(flow.room().top - top - 2.5 * (1.6 + 0.8)) < 1e-9);
  });
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
