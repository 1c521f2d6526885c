// The file of a trained net, as benchleaf/lettering/lettering_net.h reads it.

#ifndef BENCHLEAF_TESTS_READER_TRAINING_TRAINER_NET_FILE_H_
#define BENCHLEAF_TESTS_READER_TRAINING_TRAINER_NET_FILE_H_

#include <string>
#include <vector>

namespace benchleaf::training {

// A convolution, what is added, the rectifier, and the largest of each pool, in that order.
struct Layer {
  int in = 0;   // channels
  int out = 0;  // channels
  int kernel_rows = 3;
  int kernel_columns = 3;
  bool padded_rows = true;  // so that as many rows come out as went in; columns always are
  bool residual = false;    // what went in is added
  bool rectified = true;
  int pool_rows = 1;
  int pool_columns = 1;
  std::vector<float> weights;  // out x in x kernel_rows x kernel_columns
  std::vector<float> bias;     // out
};

// Weights are rounded to 127 steps either way of each output's largest. Throws std::runtime_error when the file cannot
// be written.
void WriteNet(const std::string& path, const std::vector<std::string>& characters, const std::vector<Layer>& layers);

}  // namespace benchleaf::training

#endif  // BENCHLEAF_TESTS_READER_TRAINING_TRAINER_NET_FILE_H_
