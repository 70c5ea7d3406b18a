# step(<command>): runs it and keeps what it prints in step_output; ends the script when it fails.
function(step)
  execute_process(COMMAND ${ARGV} RESULT_VARIABLE status OUTPUT_VARIABLE out ERROR_VARIABLE out)
  if(NOT status EQUAL 0)
    string(REPLACE ";" " " command "${ARGV}")
    message(FATAL_ERROR "${command}\nended with ${status}:\n${out}")
  endif()
  set(step_output "${out}" PARENT_SCOPE)
endfunction()
