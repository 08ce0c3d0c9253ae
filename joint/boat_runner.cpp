#include "joint/boat_runner.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <condition_variable>
#include <map>
#include <memory>
#include <mutex>
#include <thread>

namespace sheerlap {
namespace {

using Eigen::Index;

constexpr std::size_t lanes = static_cast<std::size_t>(lane_count);
constexpr std::size_t blocks_ahead = 4;  ///< for each thread

/// Makes up and judges blocks, one after the other.
class BlockMaker {
 public:
  explicit BlockMaker(const BoatRun& run) : run_(run), judge_(run.ground) {}

  void make(std::size_t number, BlockOutcome& block);

 private:
  using BoatNumbers = std::array<std::uint64_t, lanes>;
  void draw(const BoatNumbers& boats, ErrorSet set, LaneErrors& errors) const {
    draw_errors(run_.ground.model, {run_.seed, set, boats}, errors);
  }
  void swap_boats(const BoatNumbers& numbers, std::size_t count, BlockOutcome& block);
  void judge_all(const LaneErrors& errors, std::size_t count);
  double squeeze_of(const BoatOutcome& boat) const {
    if (boat.need == SqueezeNeed::Never) return run_.squeeze_cap_mm;
    return std::min(boat.squeeze_mm, run_.squeeze_cap_mm);
  }

  const BoatRun& run_;
  BoatJudge judge_;
  LaneErrors first_, second_;
  LaneBoats boats_;
  std::array<BoatOutcome, lanes> judged_;
};

void BlockMaker::judge_all(const LaneErrors& errors, std::size_t count) {
  apply_errors(run_.ground.model, errors, boats_);
  for (std::size_t at = 0; at < count; ++at)
    judge_.judge(boats_, static_cast<Index>(at), judged_[at]);
}

/// Judges boats with their other errors, and with one of those at a time; the boats
/// themselves are judged already.
void BlockMaker::swap_boats(const BoatNumbers& numbers,
                            std::size_t count,
                            BlockOutcome& block) {
  const std::size_t from = block.swapped;
  block.swapped += count;
  if (block.swaps.size() < block.swapped) block.swaps.resize(block.swapped);
  const auto answers = [&](std::size_t at, const auto& put) {
    SwappedBoat& boat = block.swaps[from + at];
    put(boat.volume, judged_[at].volume_ml);
    put(boat.margin, judged_[at].margin_mm);
    put(boat.squeeze, squeeze_of(judged_[at]));
  };
  draw(numbers, ErrorSet::First, first_);
  draw(numbers, ErrorSet::Second, second_);
  judge_all(first_, count);
  const std::size_t errors = run_.ground.model.errors.size();
  for (std::size_t at = 0; at < count; ++at)
    answers(at, [&](SwappedAnswers& one, double value) {
      one.first = value;
      one.swapped.resize(errors);
    });
  judge_all(second_, count);
  for (std::size_t at = 0; at < count; ++at)
    answers(at, [](SwappedAnswers& one, double value) { one.second = value; });
  for (std::size_t error = 0; error < errors; ++error) {
    swap_error(run_.ground.model, error, first_, second_);
    judge_all(first_, count);
    swap_error(run_.ground.model, error, first_, second_);
    for (std::size_t at = 0; at < count; ++at)
      answers(at,
              [&](SwappedAnswers& one, double value) { one.swapped[error] = value; });
  }
}

void BlockMaker::make(std::size_t number, BlockOutcome& block) {
  const std::size_t from = number * block_boats;
  block.boats = std::min(block_boats, run_.boats - from);
  block.outcomes.resize(block_boats);
  block.swapped = 0;
  for (std::size_t first = 0; first < block.boats; first += lanes) {
    BoatNumbers numbers;
    for (std::size_t at = 0; at < lanes; ++at) numbers[at] = from + first + at;
    const std::size_t count = std::min(lanes, block.boats - first);
    draw(numbers, ErrorSet::First, first_);
    apply_errors(run_.ground.model, first_, boats_);
    for (std::size_t at = 0; at < count; ++at)
      judge_.judge(boats_, static_cast<Index>(at), block.outcomes[first + at]);
  }
  const std::size_t every = run_.swap_every;
  const std::size_t swaps = (block.boats + every - 1) / every;
  for (std::size_t first = 0; first < swaps; first += lanes) {
    BoatNumbers numbers;
    for (std::size_t at = 0; at < lanes; ++at)
      numbers[at] = from + (first + at) * every;
    swap_boats(numbers, std::min(lanes, swaps - first), block);
  }
}

/// The blocks of a run, given out in order and handed over in order.
class BlockQueue {
 public:
  BlockQueue(std::size_t blocks, const RunHooks& hooks)
      : blocks_(blocks), ahead_(blocks_ahead * hooks.threads), hooks_(hooks) {}

  /// The next block to be made; `blocks` when there is none.
  std::size_t next();
  void hand_over(std::size_t number, std::unique_ptr<BlockOutcome> block);
  /// Room for a block, used before where there is any.
  std::unique_ptr<BlockOutcome> room();
  std::size_t blocks() const { return blocks_; }

 private:
  bool stopped() const { return hooks_.stop && hooks_.stop->load(); }

  std::size_t blocks_, ahead_;
  const RunHooks& hooks_;
  std::mutex mutex_;
  std::condition_variable handed_over_;
  std::size_t given_out_ = 0, done_ = 0;
  std::map<std::size_t, std::unique_ptr<BlockOutcome>> waiting_;
  std::vector<std::unique_ptr<BlockOutcome>> spare_;
};

std::size_t BlockQueue::next() {
  std::unique_lock lock(mutex_);
  handed_over_.wait(lock, [&] { return given_out_ < done_ + ahead_; });
  if (given_out_ == blocks_ || stopped()) return blocks_;
  return given_out_++;
}

std::unique_ptr<BlockOutcome> BlockQueue::room() {
  const std::lock_guard lock(mutex_);
  if (spare_.empty()) return std::make_unique<BlockOutcome>();
  auto block = std::move(spare_.back());
  spare_.pop_back();
  return block;
}

void BlockQueue::hand_over(std::size_t number, std::unique_ptr<BlockOutcome> block) {
  const std::lock_guard lock(mutex_);
  waiting_.emplace(number, std::move(block));
  while (!waiting_.empty() && waiting_.begin()->first == done_) {
    hooks_.block(*waiting_.begin()->second);
    spare_.push_back(std::move(waiting_.begin()->second));
    waiting_.erase(waiting_.begin());
    ++done_;
  }
  handed_over_.notify_all();
}

}  // namespace

void run_boats(const BoatRun& run, const RunHooks& hooks) {
  assert(hooks.threads >= 1 && run.swap_every >= 1);
  BlockQueue queue((run.boats + block_boats - 1) / block_boats, hooks);
  const BlockMaker maker(run);
  const auto work = [&](BlockMaker own) {
    for (std::size_t number = queue.next(); number < queue.blocks();
         number = queue.next()) {
      auto block = queue.room();
      own.make(number, *block);
      queue.hand_over(number, std::move(block));
    }
  };
  std::vector<std::jthread> threads;
  for (std::size_t i = 1; i < hooks.threads; ++i) threads.emplace_back(work, maker);
  work(maker);
}

}  // namespace sheerlap
