// stock: which sets the tubes on hand serve.

#ifndef BENCHLEAF_SRC_CLI_STOCK_COMMAND_H_
#define BENCHLEAF_SRC_CLI_STOCK_COMMAND_H_

#include "cli/job.h"
#include "cli/places.h"

#include <string>

namespace benchleaf {

struct StockOptions {
  PlaceOptions places;
  std::string file;  // the table of tubes
  std::string set;   // as typed; empty: all sets
  bool json = false;
  bool csv = false;
};

void SetUpStock(CLI::App& app, Job& job);
ExitCode RunStock(const StockOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_STOCK_COMMAND_H_
