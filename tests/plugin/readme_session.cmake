# Runs the README's session as printed, at home in the stage, and compares what it prints.
set(ENV{HOME} ${STAGE})
execute_process(COMMAND ${PYTHON} ${FOLDER}/readme_session.py ${README} ${HARNESS}
  WORKING_DIRECTORY ${STAGE} RESULT_VARIABLE status OUTPUT_VARIABLE out ERROR_VARIABLE out)
if(NOT status EQUAL 0)
  message(FATAL_ERROR "${out}")
endif()
