#include "joint/sheets/pattern_dxf.h"

#include <dxflib/dl_dxf.h>
#include <fmt/format.h>

#include <algorithm>
#include <memory>

#include "joint/sheets/temporary_file.h"

namespace sheerlap {
namespace {

/// The colour number that is black on white and white on black.
constexpr int black = 7;
/// Of $INSUNITS: millimetres; of $MEASUREMENT: metric.
constexpr int unit_millimetre = 4;
constexpr int metric = 1;

/// A code point of valid UTF-8, and the index after it.
char32_t code_point(const std::string& text, std::size_t& at) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char lead = byte(at++);
  const int more = lead < 0x80 ? 0 : lead < 0xe0 ? 1 : lead < 0xf0 ? 2 : 3;
  char32_t code = more == 0 ? lead : lead & (0x3fu >> more);
  for (int i = 0; i < more && at < text.size(); ++i)
    code = (code << 6) | (byte(at++) & 0x3fu);
  return code;
}

/// Release 12 has no Unicode, and takes two per cent signs for the start of a symbol.
std::string dxf_text(const std::string& words) {
  std::string text;
  for (std::size_t at = 0; at < words.size();) {
    const char32_t code = code_point(words, at);
    if (code == U'%')
      text += "%%%";
    else if (code < 0x80)
      text += static_cast<char>(code);
    else
      text += fmt::format("\\U+{:04X}", static_cast<unsigned>(code));
  }
  return text;
}

DL_Attributes on_layer(PatternLayer layer) {
  return {layer_name(layer), 256, -1, "BYLAYER", 1.0};
}

void write_header(DL_Dxf& dxf, DL_WriterA& writer, const PatternDrawing& drawing) {
  writer.comment("flat patterns of drill jigs, full size, millimetres");
  writer.sectionHeader();
  writer.dxfString(9, "$ACADVER");
  writer.dxfString(1, "AC1009");
  writer.dxfString(9, "$INSUNITS");
  writer.dxfInt(70, unit_millimetre);
  writer.dxfString(9, "$MEASUREMENT");
  writer.dxfInt(70, metric);
  writer.dxfString(9, "$EXTMIN");
  writer.coord(10, 0, 0, 0);
  writer.dxfString(9, "$EXTMAX");
  writer.coord(10, drawing.width_mm, drawing.height_mm, 0);
  writer.sectionEnd();
  writer.sectionTables();
  writer.tableLinetypes(1);
  dxf.writeLinetype(writer, DL_LinetypeData("CONTINUOUS", "Solid line", 0, 0, 0.0));
  writer.tableEnd();
  writer.tableLayers(static_cast<int>(pattern_layers.size()) + 1);
  const DL_Attributes plain("", black, -1, "CONTINUOUS", 1.0);
  dxf.writeLayer(writer, DL_LayerData("0", 0), plain);
  for (const PatternLayer layer : pattern_layers)
    dxf.writeLayer(writer, DL_LayerData(layer_name(layer), 0), plain);
  writer.tableEnd();
  writer.sectionEnd();
}

void write_line(DL_Dxf& dxf, DL_WriterA& writer, const PatternLine& line) {
  const DL_Attributes attributes = on_layer(line.layer);
  dxf.writePolyline(
      writer,
      DL_PolylineData(static_cast<int>(line.points.size()), 0, 0, line.closed ? 1 : 0),
      attributes);
  for (const Point2& point : line.points)
    dxf.writeVertex(writer, DL_VertexData(point.x(), point.y(), 0, 0));
  dxf.writePolylineEnd(writer);
}

void write_text(DL_Dxf& dxf, DL_WriterA& writer, const PatternText& text) {
  constexpr int centred = 1;
  constexpr int on_the_line = 0;
  dxf.writeText(writer,
                DL_TextData(text.at.x(), text.at.y(), 0, text.at.x(), text.at.y(), 0,
                            text.height_mm, 1, 0, centred, on_the_line,
                            dxf_text(text.words), "STANDARD", 0),
                on_layer(text.layer));
}

void write_entities(DL_Dxf& dxf, DL_WriterA& writer, const PatternDrawing& drawing) {
  writer.sectionEntities();
  for (const PatternLine& line : drawing.lines) write_line(dxf, writer, line);
  for (const PatternCircle& circle : drawing.circles)
    dxf.writeCircle(
        writer,
        DL_CircleData(circle.centre.x(), circle.centre.y(), 0, circle.radius_mm),
        on_layer(circle.layer));
  for (const PatternText& text : drawing.texts) write_text(dxf, writer, text);
  writer.sectionEnd();
  writer.dxfEOF();
}

}  // namespace

Result<std::string> pattern_dxf(const PatternDrawing& drawing) {
  const auto file = TemporaryFile::make();
  if (!file) return tl::unexpected(file.error());
  DL_Dxf dxf;
  const std::unique_ptr<DL_WriterA> writer(
      dxf.out(file->path().c_str(), DL_VERSION_R12));
  const auto failed = [] {
    return unreadable("",
                      "jigs.dxf cannot be written to the system's folder for "
                      "temporary files: make room there");
  };
  if (!writer || writer->openFailed()) return failed();
  write_header(dxf, *writer, drawing);
  write_entities(dxf, *writer, drawing);
  writer->close();
  auto bytes = file->bytes();
  if (bytes && !bytes->ends_with("EOF\n")) return failed();
  return bytes;
}

}  // namespace sheerlap
