# Run by ctest: see CMakeLists.txt beside this file.
function(step)
  execute_process(COMMAND ${ARGV} RESULT_VARIABLE status OUTPUT_VARIABLE out ERROR_VARIABLE out)
  if(NOT status EQUAL 0)
    string(REPLACE ";" " " command "${ARGV}")
    message(FATAL_ERROR "${command}\nended with ${status}:\n${out}")
  endif()
  set(step_output "${out}" PARENT_SCOPE)
endfunction()

file(REMOVE_RECURSE ${WORK}/stage ${WORK}/build)
step(${CMAKE_COMMAND} --install ${BUILD} --prefix ${WORK}/stage)
set(flags "")
if(SANITIZE)
  set(flags "-fsanitize=address,undefined")
endif()
step(${CMAKE_COMMAND} -S ${SOURCE} -B ${WORK}/build -G ${GENERATOR}
  -DCMAKE_CXX_COMPILER=${COMPILER} -DCMAKE_BUILD_TYPE=${CONFIG} -DCMAKE_PREFIX_PATH=${WORK}/stage
  -DCMAKE_CXX_FLAGS=${flags})
step(${CMAKE_COMMAND} --build ${WORK}/build)
step(${WORK}/build/consumer)
if(NOT step_output STREQUAL "${VERSION}: 44 H7 ends at 44.025 mm\n")
  message(FATAL_ERROR "the consumer printed '${step_output}'")
endif()
