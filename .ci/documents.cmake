# Documents and the demo; the man pages and the completion that a build makes of the table of options.
set(folder ${CMAKE_INSTALL_DOCDIR})
if(SPOTBLUE_PACKAGES)
  set(folder share/doc/spotblue-doc)
else()
  install(FILES LICENSE DESTINATION ${folder} COMPONENT doc)
endif()
# Each where it stands in the tree, so that what one says of another leads there.
foreach(document README.md CHANGELOG.md plugin/README.md bindings/python/README.md
    bindings/python/spotblue/shelf/README.md tests/reference/SOURCES.md tests/reference/schema-2.json)
  get_filename_component(place ${document} DIRECTORY)
  install(FILES ${document} DESTINATION ${folder}/${place} COMPONENT doc)
endforeach()
install(DIRECTORY models DESTINATION ${folder}/examples COMPONENT doc
  PATTERN out EXCLUDE PATTERN demo EXCLUDE)
file(MAKE_DIRECTORY ${PROJECT_BINARY_DIR}/share/doc)
file(CREATE_LINK examples/models ${PROJECT_BINARY_DIR}/share/doc/models SYMBOLIC)
install(FILES ${PROJECT_BINARY_DIR}/share/doc/models DESTINATION ${folder} COMPONENT doc)
# Packed where they are installed, since two installs of one build may run at once.
install(CODE "
  set(folder \"\${CMAKE_INSTALL_PREFIX}/${CMAKE_INSTALL_MANDIR}/man1\")
  file(MAKE_DIRECTORY \"\$ENV{DESTDIR}\${folder}\")
  file(GLOB pages \"${PROJECT_BINARY_DIR}/share/man/man1/*.1\")
  foreach(page IN LISTS pages)
    get_filename_component(name \"\${page}\" NAME)
    set(file \"\${folder}/\${name}.gz\")
    execute_process(COMMAND gzip -9nc \"\${page}\" OUTPUT_FILE \"\$ENV{DESTDIR}\${file}\"
      COMMAND_ERROR_IS_FATAL ANY)
    file(CHMOD \"\$ENV{DESTDIR}\${file}\" PERMISSIONS OWNER_READ OWNER_WRITE GROUP_READ WORLD_READ)
    list(APPEND CMAKE_INSTALL_MANIFEST_FILES \"\${file}\")
  endforeach()" COMPONENT program)
install(FILES ${PROJECT_BINARY_DIR}/share/bash-completion/completions/spotblue OPTIONAL
  DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions COMPONENT program)
