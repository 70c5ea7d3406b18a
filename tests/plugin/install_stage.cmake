# Installs to ${STAGE}/spotblue and makes the demo's models beside it.
function(step)
  execute_process(COMMAND ${ARGV} WORKING_DIRECTORY ${STAGE}
    RESULT_VARIABLE status OUTPUT_VARIABLE out ERROR_VARIABLE out)
  if(NOT status EQUAL 0)
    string(REPLACE ";" " " command "${ARGV}")
    message(FATAL_ERROR "${command}\nended with ${status}:\n${out}")
  endif()
endfunction()

file(REMOVE_RECURSE ${STAGE})
file(MAKE_DIRECTORY ${STAGE}/models/out)
file(GLOB demo ${MODELS}/*.toml)
file(COPY ${demo} ${CMAKE_CURRENT_LIST_DIR}/by-size.job.toml DESTINATION ${STAGE}/models)
step(${CMAKE_COMMAND} --install ${BUILD} --prefix ${STAGE}/spotblue)
foreach(model ink-disc-plan-b hand-pump-crank)
  step(${STAGE}/spotblue/bin/spotblue model models/${model}.mockup.toml models/out/${model}.step)
endforeach()
