#include "joint/sheets/temporary_file.h"

#include <boost/test/unit_test.hpp>
#include <fstream>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(temporary_file_suite)

BOOST_AUTO_TEST_CASE(it_is_there_while_its_object_is) {
  std::filesystem::path path;
  {
    const auto file = TemporaryFile::make();
    BOOST_TEST_REQUIRE(file.has_value());
    path = file->path();
    std::ofstream(path, std::ios::binary) << std::string("a\0b\r\n", 5);
    BOOST_TEST(*file->bytes() == std::string("a\0b\r\n", 5));
  }
  BOOST_TEST(!std::filesystem::exists(path));
}

BOOST_AUTO_TEST_CASE(one_that_is_gone_cannot_be_read) {
  const auto file = TemporaryFile::make();
  std::filesystem::remove(file->path());
  const auto bytes = file->bytes();
  BOOST_TEST_REQUIRE(!bytes.has_value());
  BOOST_TEST((bytes.error().front().kind == ErrorKind::Unreadable));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
