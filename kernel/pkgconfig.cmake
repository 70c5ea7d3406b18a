# For pkg-config: spotblue-numbers is the layers without CAD, spotblue all. Their text is made when
# they are installed, since only then the prefix is known.
foreach(name spotblue-numbers spotblue)
  install(CODE "
    set(prefix \"\${CMAKE_INSTALL_PREFIX}\")
    set(libdir \"${CMAKE_INSTALL_LIBDIR}\")
    set(includedir \"${CMAKE_INSTALL_INCLUDEDIR}\")
    set(version \"${PROJECT_VERSION}\")
    configure_file(\"${CMAKE_CURRENT_LIST_DIR}/${name}.pc.in\"
      \"${PROJECT_BINARY_DIR}/generated/${name}.pc\" @ONLY)" COMPONENT development)
  install(FILES ${PROJECT_BINARY_DIR}/generated/${name}.pc
    DESTINATION ${CMAKE_INSTALL_LIBDIR}/pkgconfig COMPONENT development)
endforeach()
