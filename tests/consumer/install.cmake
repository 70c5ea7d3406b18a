include(${CMAKE_CURRENT_LIST_DIR}/step.cmake)
file(REMOVE_RECURSE ${STAGE})
step(${CMAKE_COMMAND} --install ${BUILD} --prefix ${STAGE})
