#include "geometry/contained.hpp"

#include <gmock/gmock.h>

#include <Standard_DomainError.hxx>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <new>
#include <stdexcept>
#include <string>
#include <thread>
#include <vector>

namespace spotblue {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

using End = Contained::End;

ReadLimits quick() {
  ReadLimits limits;
  limits.seconds = 2.0;
  limits.memory_mb = 500.0;
  return limits;
}

double seconds_of(const std::function<void()>& work) {
  const auto start = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

TEST(Contained, HandsBackWhatTheWorkReturns) {
  const Contained run = run_contained([] { return std::string("a\0b", 3); }, quick());
  EXPECT_EQ(run.end, End::finished);
  EXPECT_EQ(run.bytes, std::string("a\0b", 3));
}

TEST(Contained, AResultLargerThanAnyPipeArrivesWhole) {
  std::string large;
  large.assign(20'000'000, 'x');
  const Contained run = run_contained([&] { return large; }, ReadLimits{});
  EXPECT_EQ(run.end, End::finished);
  EXPECT_TRUE(run.bytes == large);
}

TEST(Contained, AnExceptionIsToldInOneLine) {
  const Contained run =
      run_contained([]() -> std::string { throw std::runtime_error("no\nluck"); }, quick());
  EXPECT_EQ(run.end, End::failed);
  EXPECT_EQ(run.detail, "no luck");
}

TEST(Contained, AKernelFailureIsToldWithItsType) {
  const Contained run =
      run_contained([]() -> std::string { throw Standard_DomainError("out of range"); }, quick());
  EXPECT_EQ(run.end, End::failed);
  EXPECT_EQ(run.detail, "Standard_DomainError: out of range");
}

TEST(Contained, AnErrorArrivesAsItWasThrown) {
  const Contained run = run_contained(
      []() -> std::string {
        throw Error(ErrorCode::file_access, {"", "line 7"}, "no room", "make some");
      },
      quick());
  EXPECT_EQ(run.end, End::failed);
  try {
    throw_own_error(run, "part.step");
    FAIL() << "nothing was thrown";
  } catch (const Error& error) {
    EXPECT_EQ(error.code(), ErrorCode::file_access);
    EXPECT_STREQ(error.what(), "part.step, line 7: no room; make some");
    EXPECT_EQ(error.cure(), "make some");
  }
}

TEST(RunHere, ReturnsAndFailsAsInAChild) {
  EXPECT_EQ(run_here([] { return std::string("a"); }).bytes, "a");
  const Contained failed =
      run_here([]() -> std::string { throw Standard_DomainError("out of\nrange"); });
  EXPECT_EQ(failed.end, End::failed);
  EXPECT_EQ(failed.detail, "Standard_DomainError: out of range");
  EXPECT_EQ(run_here([]() -> std::string { throw std::bad_alloc(); }).end, End::out_of_memory);
}

TEST(Contained, ACrashIsToldAndTheCallerLives) {
  const Contained run = run_contained(
      []() -> std::string {
        std::raise(SIGSEGV);
        return {};
      },
      quick());
  EXPECT_EQ(run.end, End::crashed);
  EXPECT_THAT(run.detail, HasSubstr("Segmentation"));
}

TEST(Contained, AnEndFromOutsideIsNoCrashAndSaysNothingOfTheWork) {
  for (const int number : {SIGKILL, SIGTERM, SIGHUP, SIGINT, SIGQUIT}) {
    try {
      (void)run_contained(
          [number]() -> std::string {
            std::raise(number);
            return {};
          },
          quick());
      ADD_FAILURE() << "signal " << number;
    } catch (const Error& error) {
      EXPECT_EQ(error.code(), ErrorCode::kernel_failure);
      EXPECT_THAT(error.rule(), HasSubstr("ended from outside"));
    }
  }
}

TEST(Contained, AnAbortIsACrash) {
  const Contained run = run_contained([]() -> std::string { std::abort(); }, quick());
  EXPECT_EQ(run.end, End::crashed);
}

TEST(Contained, AnEarlyExitIsACrashAndNoResult) {
  const Contained run = run_contained([]() -> std::string { std::_Exit(0); }, quick());
  EXPECT_EQ(run.end, End::crashed);
  EXPECT_TRUE(run.bytes.empty());
}

TEST(Contained, WorkThatNeverEndsIsStoppedInTime) {
  Contained run;
  ReadLimits limits = quick();
  limits.seconds = 0.5;
  const double seconds = seconds_of([&] {
    run = run_contained(
        []() -> std::string {
          while (true) {
            std::this_thread::sleep_for(std::chrono::seconds(1));
          }
        },
        limits);
  });
  EXPECT_EQ(run.end, End::out_of_time);
  EXPECT_LT(seconds, 2.0);
}

TEST(Contained, WorkThatEatsAllMemoryIsStopped) {
  const Contained run = run_contained(
      [] {
        std::vector<std::unique_ptr<std::string>> hoard;
        while (true) {
          hoard.push_back(std::make_unique<std::string>(10'000'000, 'x'));
          std::this_thread::sleep_for(std::chrono::milliseconds(1));
        }
        return std::string();
      },
      ReadLimits{.seconds = 60.0, .memory_mb = 300.0});
  EXPECT_EQ(run.end, End::out_of_memory);
}

TEST(Contained, WhatTheWorkPrintsGoesNowhere) {
  testing::internal::CaptureStdout();
  testing::internal::CaptureStderr();
  const Contained run = run_contained(
      [] {
        std::puts("loud");
        std::fputs("louder", stderr);
        std::fflush(nullptr);
        return std::string("done");
      },
      quick());
  EXPECT_EQ(testing::internal::GetCapturedStdout(), "");
  EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
  EXPECT_EQ(run.bytes, "done");
}

TEST(Contained, TwoAtOnceFromTwoThreadsBothEnd) {
  std::vector<Contained> runs(2);
  std::thread other([&] { runs[1] = run_contained([] { return std::string("b"); }, quick()); });
  runs[0] = run_contained([] { return std::string("a"); }, quick());
  other.join();
  EXPECT_EQ(runs[0].bytes + runs[1].bytes, "ab");
}

}  // namespace
}  // namespace spotblue
