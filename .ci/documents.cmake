# Documents and the demo; the man pages and the completion that a build makes of the table of options.
set(folder ${CMAKE_INSTALL_DOCDIR})
if(SPOTBLUE_PACKAGES)
  set(folder share/doc/spotblue-doc)
else()
  install(FILES LICENSE DESTINATION ${folder} COMPONENT doc)
endif()
install(FILES README.md CHANGELOG.md DESTINATION ${folder} COMPONENT doc)
install(DIRECTORY models DESTINATION ${folder}/examples COMPONENT doc
  PATTERN out EXCLUDE PATTERN demo EXCLUDE)
install(CODE "
  file(GLOB pages \"${PROJECT_BINARY_DIR}/share/man/man1/*.1\")
  foreach(page IN LISTS pages)
    get_filename_component(name \"\${page}\" NAME)
    execute_process(COMMAND gzip -9nc \"\${page}\" OUTPUT_FILE \"\${page}.gz\" COMMAND_ERROR_IS_FATAL ANY)
    file(INSTALL \"\${page}.gz\" DESTINATION \"\${CMAKE_INSTALL_PREFIX}/${CMAKE_INSTALL_MANDIR}/man1\")
  endforeach()" COMPONENT program)
install(FILES ${PROJECT_BINARY_DIR}/share/bash-completion/completions/spotblue OPTIONAL
  DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions COMPONENT program)
