#include "spotblue/base/log.hpp"

#include <spdlog/sinks/base_sink.h>
#include <spdlog/sinks/null_sink.h>

#include <memory>
#include <utility>

#include "base/logger.hpp"
#include "spotblue/base/error.hpp"
#include "spotblue/base/shown_name.hpp"

namespace spotblue {
namespace {

class CallbackSink : public spdlog::sinks::base_sink<std::mutex> {
 public:
  explicit CallbackSink(std::function<void(LogLevel, std::string_view)> receiver)
      : receiver_(std::move(receiver)) {}

 protected:
  void sink_it_(const spdlog::details::log_msg& message) override {
    const LogLevel level = message.level >= spdlog::level::warn   ? LogLevel::warning
                           : message.level == spdlog::level::info ? LogLevel::info
                                                                  : LogLevel::debug;
    const std::string_view text(message.payload.data(), message.payload.size());
    receiver_(level, shortened(shown_text(text), kMostMessage));
  }
  void flush_() override {}

 private:
  std::function<void(LogLevel, std::string_view)> receiver_;
};

}  // namespace

spdlog::logger& logger() {
  // A logger of our own, never registered: spdlog's default logger prints to stdout.
  static spdlog::logger instance("spotblue", std::make_shared<spdlog::sinks::null_sink_mt>());
  return instance;
}

void set_log_sink(std::function<void(LogLevel, std::string_view)> sink) {
  auto& sinks = logger().sinks();
  sinks.clear();
  if (sink) {
    sinks.push_back(std::make_shared<CallbackSink>(std::move(sink)));
    logger().set_level(spdlog::level::debug);
  } else {
    sinks.push_back(std::make_shared<spdlog::sinks::null_sink_mt>());
    logger().set_level(spdlog::level::off);
  }
}

}  // namespace spotblue
