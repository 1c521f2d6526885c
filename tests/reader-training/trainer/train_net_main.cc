// Trains the lettering net on crops that make-crops wrote, and judges it on others.

#include "lettering/net_file.h"
#include "reader-training/run_tool.h"
#include "reader-training/trainer/crop_file.h"
#include "reader-training/trainer/spoil.h"
#include "reader-training/trainer/write_net.h"

#include "benchleaf/core/utf8.h"
#include "benchleaf/lettering/lettering_net.h"
#include "benchleaf/lettering/line_strip.h"

#include <torch/torch.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <numbers>
#include <random>
#include <set>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchleaf::training {
namespace {

namespace nn = torch::nn;

constexpr const char* kUsage =
    "train-net OUT CROPS RATE THREADS FROM JUDGE.crops... -- TRAIN.crops...\n"
    "Learns from CROPS crops, each spoilt anew, at first at RATE, and writes the net OUT. Goes on from the net FROM,\n"
    "or from nothing when that is `-`. Prints the share of each judge's texts that are read wholly right now and "
    "then,\n"
    "and at the end.\n";

// The shape of the net: convolution, batch normalization, rectifier, pooling. Columns become a quarter, rows one.
std::vector<NetLayer> Shape(std::size_t characters) {
  std::vector<NetLayer> shape(10);
  const std::vector<std::size_t> channels = {1, 16, 40, 64, 64, 112, 144, 144, 144, 144, characters + 1};
  for (std::size_t i = 0; i < shape.size(); ++i) {
    shape[i].in = channels[i];
    shape[i].out = channels[i + 1];
    shape[i].kernel_rows = shape[i].kernel_columns = 3;
  }
  shape[0].pool_rows = shape[0].pool_columns = 2;
  shape[1].pool_rows = shape[1].pool_columns = 2;
  shape[3].pool_rows = 2;
  shape[4].pool_rows = 2;
  shape[5].kernel_rows = 2;
  shape[5].padded_rows = false;
  for (std::size_t i = 6; i < 9; ++i) {
    shape[i].kernel_rows = 1;
    shape[i].kernel_columns = 5;
    shape[i].residual = true;
  }
  shape[9].kernel_rows = shape[9].kernel_columns = 1;
  shape[9].rectified = false;
  return shape;
}

class LearnerImpl : public nn::Module {
 public:
  explicit LearnerImpl(std::vector<NetLayer> shape) : shape_(std::move(shape)) {
    for (std::size_t i = 0; i < shape_.size(); ++i) {
      const NetLayer& layer = shape_[i];
      const bool last = i + 1 == shape_.size();
      const auto in = static_cast<long>(layer.in);
      const auto out = static_cast<long>(layer.out);
      const auto rows = static_cast<long>(layer.kernel_rows);
      const auto columns = static_cast<long>(layer.kernel_columns);
      convolutions_.push_back(register_module("convolution" + std::to_string(i),
                                              nn::Conv2d(nn::Conv2dOptions(in, out, {rows, columns})
                                                             .padding({layer.padded_rows ? rows / 2 : 0, columns / 2})
                                                             .bias(last))));
      norms_.push_back(last ? nullptr : register_module("norm" + std::to_string(i), nn::BatchNorm2d(out)));
    }
  }

  // Batch x 1 x rows x columns to steps x batch x (characters and the blank), logarithms of chances.
  torch::Tensor forward(torch::Tensor x) {
    for (std::size_t i = 0; i < shape_.size(); ++i) x = After(i, x);
    return x.squeeze(2).permute({2, 0, 1}).log_softmax(2);
  }

  // Takes up a net that Folded() gave. What was folded is opened again so that the normalization of `sample`, strips as
  // in forward(), changes nothing: each layer's gain and shift are its own output's spread and mean.
  void Unfold(const std::vector<NetLayer>& layers, torch::Tensor x) {
    const torch::NoGradGuard no_gradient;
    for (std::size_t i = 0; i < layers.size(); ++i) {
      convolutions_[i]->weight.copy_(torch::tensor(layers[i].weights).view_as(convolutions_[i]->weight));
      const torch::Tensor bias = torch::tensor(layers[i].bias);
      if (norms_[i]) {
        const torch::Tensor out = convolutions_[i]->forward(x);
        const torch::Tensor mean = out.mean({0, 2, 3});
        const torch::Tensor variance = out.var({0, 2, 3}, false);
        norms_[i]->running_mean.copy_(mean);
        norms_[i]->running_var.copy_(variance);
        norms_[i]->weight.copy_((variance + norms_[i]->options.eps()).sqrt());
        norms_[i]->bias.copy_(bias + mean);
      } else {
        convolutions_[i]->bias.copy_(bias);
      }
      x = After(i, x);
    }
  }

  // What the normalization goes by is told anew, as the mean over the batches that are run between SettleOver(true) and
  // SettleOver(false). As training leaves it, it is that of the last few batches, and batches of words differ from
  // those of phrases.
  void SettleOver(bool begin) {
    for (nn::BatchNorm2d& norm : norms_) {
      if (norm && begin) {
        norm->reset_running_stats();
      }
      if (norm) {
        norm->options.momentum(begin ? c10::optional<double>() : c10::optional<double>(0.1));
      }
    }
  }

  // With the normalization folded into weights and biases.
  std::vector<NetLayer> Folded() const {
    std::vector<NetLayer> layers = shape_;
    const auto numbers = [](const torch::Tensor& tensor) {
      const torch::Tensor flat = tensor.detach().contiguous().view(-1);
      return std::vector<float>(flat.data_ptr<float>(), flat.data_ptr<float>() + flat.numel());
    };
    for (std::size_t i = 0; i < layers.size(); ++i) {
      torch::Tensor weights = convolutions_[i]->weight.detach();
      if (norms_[i]) {
        const torch::Tensor gain = norms_[i]->weight / (norms_[i]->running_var + norms_[i]->options.eps()).sqrt();
        weights = weights * gain.view({-1, 1, 1, 1});
        layers[i].bias = numbers(norms_[i]->bias - norms_[i]->running_mean * gain);
      } else {
        layers[i].bias = numbers(convolutions_[i]->bias);
      }
      layers[i].weights = numbers(weights);
    }
    return layers;
  }

 private:
  torch::Tensor After(std::size_t i, const torch::Tensor& x) {
    torch::Tensor y = convolutions_[i]->forward(x);
    if (norms_[i]) {
      y = norms_[i]->forward(y);
    }
    if (shape_[i].residual) {
      y = y + x;
    }
    if (shape_[i].rectified) {
      y = torch::relu(y);
    }
    if (shape_[i].pool_rows > 1 || shape_[i].pool_columns > 1) {
      y = torch::max_pool2d(y, {static_cast<long>(shape_[i].pool_rows), static_cast<long>(shape_[i].pool_columns)});
    }
    return y;
  }

  std::vector<NetLayer> shape_;
  std::vector<nn::Conv2d> convolutions_;
  std::vector<nn::BatchNorm2d> norms_;
};
TORCH_MODULE(Learner);

// Every one once, in order.
std::vector<std::string> CharactersOf(const std::vector<Crop>& crops) {
  std::set<std::string> all;
  for (const Crop& crop : crops) {
    for (const std::string_view character : Characters(crop.text)) all.emplace(character);
  }
  return {all.begin(), all.end()};
}

// Characters by number; 0 is the blank.
class Alphabet {
 public:
  explicit Alphabet(std::vector<std::string> characters) : characters_(std::move(characters)) {
    for (std::size_t i = 0; i < characters_.size(); ++i) numbers_[characters_[i]] = static_cast<long>(i) + 1;
  }

  const std::vector<std::string>& characters() const { return characters_; }
  bool Spells(const std::string& text) const {
    const std::vector<long> numbers = Numbers(text);
    return std::find(numbers.begin(), numbers.end(), -1) == numbers.end();
  }
  std::vector<long> Numbers(const std::string& text) const {
    std::vector<long> numbers;
    for (const std::string_view character : Characters(text)) {
      const auto found = numbers_.find(std::string(character));
      numbers.push_back(found == numbers_.end() ? -1 : found->second);
    }
    return numbers;
  }

 private:
  std::vector<std::string> characters_;
  std::map<std::string, long> numbers_;
};

torch::Tensor BatchOf(const std::vector<Strip>& strips) {
  int widest = 16;
  for (const Strip& strip : strips) widest = std::max(widest, strip.width);
  widest = (widest + kStepPx - 1) / kStepPx * kStepPx;
  torch::Tensor batch = torch::zeros({static_cast<long>(strips.size()), 1, kStripRows, widest});
  for (std::size_t i = 0; i < strips.size(); ++i) {
    float* to = batch.data_ptr<float>() + static_cast<long>(i) * kStripRows * widest;
    for (int y = 0; y < kStripRows; ++y) {
      std::copy_n(strips[i].ink.begin() + static_cast<long>(y) * strips[i].width, strips[i].width, to + y * widest);
    }
  }
  return batch;
}

double ShareRight(Learner& net, const Alphabet& alphabet, const std::vector<Crop>& crops) {
  const torch::NoGradGuard no_gradient;
  net->eval();
  std::size_t right = 0;
  for (const Crop& crop : crops) {
    const torch::Tensor best = net->forward(BatchOf({AsIs(crop)})).argmax(2).view(-1);
    std::vector<long> read;
    long before = 0;
    for (long step = 0; step < best.size(0); ++step) {
      const long number = best[step].item<long>();
      if (number != before && number != 0) {
        read.push_back(number);
      }
      before = number;
    }
    right += read == alphabet.Numbers(crop.text) ? 1U : 0U;
  }
  net->train();
  return static_cast<double>(right) / static_cast<double>(crops.size());
}

// Hands out crops in an order that a seed gives, those of like width together.
class Batches {
 public:
  Batches(const std::vector<Crop>& crops, std::mt19937_64& random) : crops_(crops), random_(random) {
    for (std::size_t i = 0; i < crops.size(); ++i) order_.push_back(i);
    next_ = order_.size();
  }

  std::vector<const Crop*> Next() {
    constexpr int kColumns = 6400;  // px together
    if (batches_.empty()) {
      FillBatches(kColumns);
    }
    std::vector<const Crop*> batch = std::move(batches_.back());
    batches_.pop_back();
    return batch;
  }

 private:
  void FillBatches(int columns) {
    constexpr std::size_t kPool = 4096;
    std::vector<const Crop*> pool;
    while (pool.size() < kPool) {
      if (next_ == order_.size()) {
        std::shuffle(order_.begin(), order_.end(), random_);
        next_ = 0;
      }
      pool.push_back(&crops_[order_[next_++]]);
    }
    std::sort(pool.begin(), pool.end(), [](const Crop* a, const Crop* b) { return a->width < b->width; });
    std::vector<const Crop*> batch;
    for (const Crop* crop : pool) {
      if (!batch.empty() && static_cast<int>(batch.size() + 1) * crop->width > columns) {
        batches_.push_back(std::exchange(batch, {}));
      }
      batch.push_back(crop);
    }
    batches_.push_back(std::move(batch));
    std::shuffle(batches_.begin(), batches_.end(), random_);
  }

  const std::vector<Crop>& crops_;
  std::mt19937_64& random_;
  std::vector<std::size_t> order_;
  std::size_t next_ = 0;
  std::vector<std::vector<const Crop*>> batches_;
};

double RateAt(double done, double highest) {
  constexpr double kWarm = 0.02;
  return done < kWarm ? highest * (done + 0.001) / kWarm
                      : highest * 0.5 * (1.002 + std::cos(std::numbers::pi * std::min(1.0, done)));
}

std::vector<Strip> AllSpoilt(const std::vector<const Crop*>& batch, std::mt19937_64& random) {
  std::vector<Strip> strips;
  for (const Crop* crop : batch) strips.push_back(Spoilt(*crop, random));
  return strips;
}

// Runs batches so that the normalization fits all kinds of them.
void Settle(Learner& net, Batches& batches, std::mt19937_64& random) {
  constexpr int kBatches = 400;
  const torch::NoGradGuard no_gradient;
  net->SettleOver(true);
  for (int i = 0; i < kBatches; ++i) net->forward(BatchOf(AllSpoilt(batches.Next(), random)));
  net->SettleOver(false);
}

// The net to go on from, without layers when there is none. Throws std::invalid_argument when it cannot be loaded.
Net NetBefore(const std::string& file) {
  if (file == "-") {
    return {};
  }
  Result<Net> net = LoadNet(file);
  if (!net) {
    throw std::invalid_argument(net.error().message);
  }
  return std::move(*net);
}

void Train(const std::string& out, long crops_to_learn, double highest_rate, const Net& before,
           const std::vector<std::string>& judge_files, std::vector<Crop> crops) {
  const Alphabet alphabet(before.layers.empty() ? CharactersOf(crops) : before.characters);
  std::erase_if(crops, [&](const Crop& crop) { return !alphabet.Spells(crop.text); });
  std::vector<std::vector<Crop>> judges;
  for (const std::string& file : judge_files) judges.push_back(LoadCrops(file));
  std::printf("%zu crops, %zu characters\n", crops.size(), alphabet.characters().size());
  torch::manual_seed(1);
  std::mt19937_64 random(1);
  Learner net(Shape(alphabet.characters().size()));
  Batches batches(crops, random);
  if (!before.layers.empty()) {
    net->Unfold(before.layers, BatchOf(AllSpoilt(batches.Next(), random)));
  }
  torch::optim::AdamW optimizer(net->parameters(), torch::optim::AdamWOptions(1e-3).weight_decay(1e-3));
  nn::CTCLoss ctc(nn::CTCLossOptions().zero_infinity(true));
  constexpr long kTold = 120'000;
  long told = 0;
  double loss_sum = 0;
  long steps = 0;
  for (long learnt = 0; learnt < crops_to_learn;) {
    const std::vector<const Crop*> batch = batches.Next();
    const std::vector<Strip> strips = AllSpoilt(batch, random);
    std::vector<long> targets;
    std::vector<long> target_lengths;
    std::vector<long> step_counts;
    for (const Crop* crop : batch) {
      const std::vector<long> numbers = alphabet.Numbers(crop->text);
      targets.insert(targets.end(), numbers.begin(), numbers.end());
      target_lengths.push_back(static_cast<long>(numbers.size()));
    }
    for (const Strip& strip : strips) step_counts.push_back(std::max(1, strip.width / kStepPx));
    for (torch::optim::OptimizerParamGroup& group : optimizer.param_groups()) {
      group.options().set_lr(RateAt(static_cast<double>(learnt) / static_cast<double>(crops_to_learn), highest_rate));
    }
    optimizer.zero_grad();
    torch::Tensor loss = ctc(net->forward(BatchOf(strips)), torch::tensor(targets), torch::tensor(step_counts),
                             torch::tensor(target_lengths));
    loss.backward();
    nn::utils::clip_grad_norm_(net->parameters(), 5.0);
    optimizer.step();
    loss_sum += loss.item<double>();
    ++steps;
    learnt += static_cast<long>(batch.size());
    if (learnt / kTold > told || learnt >= crops_to_learn) {
      told = learnt / kTold;
      Settle(net, batches, random);
      std::printf("%ld learnt, loss %.4f, right", learnt, loss_sum / static_cast<double>(steps));
      for (const std::vector<Crop>& judge : judges) std::printf(" %.4f", ShareRight(net, alphabet, judge));
      std::printf("\n");
      std::fflush(stdout);
      loss_sum = 0;
      steps = 0;
      WriteNet(out, {alphabet.characters(), net->Folded()});
    }
  }
}

void Run(const std::vector<std::string>& arguments) {
  const auto split = std::find(arguments.begin(), arguments.end(), "--");
  if (arguments.size() < 7 || split == arguments.end() || split - arguments.begin() < 5 ||
      split + 1 == arguments.end()) {
    throw std::invalid_argument("too few arguments");
  }
  at::set_num_threads(std::stoi(arguments[3]));
  std::vector<Crop> crops;
  for (auto file = split + 1; file != arguments.end(); ++file) {
    std::vector<Crop> more = LoadCrops(*file);
    std::move(more.begin(), more.end(), std::back_inserter(crops));
  }
  Train(arguments[0], std::stol(arguments[1]), std::stod(arguments[2]), NetBefore(arguments[4]),
        {arguments.begin() + 5, split}, std::move(crops));
}

}  // namespace
}  // namespace benchleaf::training

int main(int argc, char** argv) {
  using namespace benchleaf::training;
  return RunTool("train-net", kUsage, argc, argv, Run);
}
