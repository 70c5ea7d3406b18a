#include "geometry/occt/contained.hpp"

#include <gmock/gmock.h>
#include <sys/mman.h>
#include <sys/resource.h>
#include <unistd.h>

#include <Standard_DomainError.hxx>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <memory>
#include <new>
#include <stdexcept>
#include <string>
#include <thread>
#include <vector>

#include "geometry/occt/require_finished.hpp"
#include "support/thrown.hpp"

namespace spotblue::contained_test {

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

TEST(Contained, AFailureOfOpenCascadeIsToldWithItsType) {
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
  const Error error = test::error_of([&] { throw_own_error(run, "part.step"); });
  EXPECT_EQ(error.code(), ErrorCode::file_access);
  EXPECT_STREQ(error.what(), "part.step, line 7: no room; make some");
  EXPECT_EQ(error.cure(), "make some");
}

TEST(Contained, ALongNameArrivesWhole) {
  const std::string name = "/" + std::string(3000, 'n');
  const Contained run = run_contained(
      [&]() -> std::string {
        throw Error(ErrorCode::file_access, {name, ""}, "no room", "");
      },
      quick());
  ASSERT_TRUE(run.error);
  EXPECT_EQ(run.error->file(), name);
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
    const Error error = test::error_of([&] {
      return run_contained(
          [number]() -> std::string {
            std::raise(number);
            return {};
          },
          quick());
    });
    EXPECT_EQ(error.code(), ErrorCode::system);
    EXPECT_EQ(error.file(), "");
    EXPECT_THAT(error.rule(), HasSubstr("ended from outside"));
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

// A limit that was set for the caller is no fault of the file, nor is a machine with less memory
// than the file may take.
TEST(Contained, LessMemoryThanItMayTakeIsTheMachinesLack) {
#ifdef __SANITIZE_ADDRESS__
  GTEST_SKIP() << "the address space is not limited here";
#endif
  rlimit before{};
  getrlimit(RLIMIT_AS, &before);
  if (before.rlim_max != RLIM_INFINITY) {
    GTEST_SKIP() << "the address space is limited already";
  }
  std::ifstream statm("/proc/self/statm");
  double pages = 0.0;
  statm >> pages;
  const rlimit less{static_cast<rlim_t>(pages * static_cast<double>(sysconf(_SC_PAGESIZE)) + 1e8),
                    before.rlim_max};
  setrlimit(RLIMIT_AS, &less);
  const Contained run =
      run_contained([]() -> std::string { return std::string(300'000'000, 'x'); }, quick());
  setrlimit(RLIMIT_AS, &before);
  EXPECT_EQ(run.end, End::lacking) << run.detail;
  EXPECT_THAT(run.detail, HasSubstr("MB"));
}

TEST(Contained, AFileThatMayGrowNoMoreIsNoCrash) {
  rlimit before{};
  getrlimit(RLIMIT_FSIZE, &before);
  const rlimit none{0, before.rlim_max};
  setrlimit(RLIMIT_FSIZE, &none);
  const Contained run = run_contained(
      []() -> std::string {
        const int file = memfd_create("small", 0);
        return write(file, "x", 1) < 0 && errno == EFBIG ? "told" : "written";
      },
      quick());
  setrlimit(RLIMIT_FSIZE, &before);
  EXPECT_EQ(run.bytes, "told");
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

}  // namespace spotblue::contained_test
