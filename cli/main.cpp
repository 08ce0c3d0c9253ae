#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <string>
#include <vector>

#include "cli/run.h"

int main(int count, char** arguments) {
  // a reader that goes away is a write that fails, and is reported as one
  std::signal(SIGPIPE, SIG_IGN);
  // and so is a file that may grow no further
  std::signal(SIGXFSZ, SIG_IGN);
  try {
    return sheerlap::run({arguments + (count > 0 ? 1 : 0), arguments + count},
                         std::getenv("SOURCE_DATE_EPOCH"));
  } catch (const std::exception& error) {
    // not one of the four answers: the program itself is at fault or out of memory
    std::fprintf(stderr, "sheerlap stopped without a result: %s\n", error.what());
    return 70;
  }
}
