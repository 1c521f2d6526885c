// Writes the file of a trained net, as src/lettering/net_file.h lays it out.

#ifndef BENCHLEAF_TESTS_READER_TRAINING_TRAINER_WRITE_NET_H_
#define BENCHLEAF_TESTS_READER_TRAINING_TRAINER_WRITE_NET_H_

#include "lettering/net_file.h"

#include <string>

namespace benchleaf::training {

// Weights are rounded to 127 steps either way of each output's largest. Throws std::runtime_error when the file cannot
// be written.
void WriteNet(const std::string& path, const Net& net);

}  // namespace benchleaf::training

#endif  // BENCHLEAF_TESTS_READER_TRAINING_TRAINER_WRITE_NET_H_
