# For pkg-config: spotblue-numbers is the layers without CAD, spotblue all. Their text is made when
# they are installed, since only then the prefix is known; and where it is installed, since two
# installs of one build may run at once.
foreach(name spotblue-numbers spotblue)
  install(CODE "
    set(prefix \"\${CMAKE_INSTALL_PREFIX}\")
    set(libdir \"${CMAKE_INSTALL_LIBDIR}\")
    set(includedir \"${CMAKE_INSTALL_INCLUDEDIR}\")
    set(version \"${PROJECT_VERSION}\")
    set(file \"\${prefix}/\${libdir}/pkgconfig/${name}.pc\")
    configure_file(\"${CMAKE_CURRENT_LIST_DIR}/${name}.pc.in\" \"\$ENV{DESTDIR}\${file}\" @ONLY)
    list(APPEND CMAKE_INSTALL_MANIFEST_FILES \"\${file}\")" COMPONENT development)
endforeach()
