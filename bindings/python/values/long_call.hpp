#pragma once
/// @file
/// Long work of the kernel, run so that Ctrl-C and other Python threads go on working.

#include <functional>
#include <memory>
#include <optional>
#include <utility>

namespace spotblue::python {

/// Runs `work` to its end without the interpreter lock, on a thread that takes no signals.
///
/// Every 0.1 s the caller looks for signals; when a handler raises (KeyboardInterrupt), the work is
/// asked to stop, waited for as long as 0.7 s, and the exception passed on. `work` owns whatever it
/// needs: it may outlive the call by as long as it takes to notice.
void run_long(std::function<void()> work);

/// The same for work with a result.
template <class Work>
auto long_call(Work work) {
  using Result = decltype(work());
  const auto result = std::make_shared<std::optional<Result>>();
  run_long([work = std::move(work), result]() { result->emplace(work()); });
  return std::move(**result);
}

}  // namespace spotblue::python
