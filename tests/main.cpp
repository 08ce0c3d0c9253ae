#define BOOST_TEST_MODULE sheerlap
#include <boost/test/unit_test.hpp>
