#include "cli/worker_command.h"

#include "cli/places.h"

#include "benchleaf/work/index_library.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace benchleaf {

void SetUpWorker(CLI::App& app, Job& job) {
  auto places = std::make_shared<PlaceOptions>();
  CLI::App* command = app.add_subcommand("worker", "Read pages for `benchleaf index`");
  command->group("");  // not listed
  command->add_option("--config", places->config)->required();
  command->callback([places, &job] {
    job = [places](const Streams&) { return static_cast<ExitCode>(RunWorker(places->ConfigFolder())); };
  });
}

}  // namespace benchleaf
