# Debian's packages, one a component: `.ci/make-packages OUT` makes them with CPack. What every
# package must have goes in here; what each one is about stands beside its name below.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_CONTACT "spotblue maintainers <maintainers@spotblue.invalid>")
set(CPACK_PACKAGE_VENDOR spotblue)
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "")  # else it stands before each package's own
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
  OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_DEB_COMPONENT_INSTALL ON)
set(CPACK_COMPONENTS_GROUPING IGNORE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS_PRIVATE_DIRS ${PROJECT_BINARY_DIR}/kernel)
set(debian_build ${PROJECT_BINARY_DIR}/debian)

# Native packages: one changelog, whose date is that of the sources.
if(NOT DEFINED ENV{SOURCE_DATE_EPOCH})
  message(FATAL_ERROR "SPOTBLUE_PACKAGES wants SOURCE_DATE_EPOCH; .ci/make-packages sets it")
endif()
execute_process(COMMAND date --utc --rfc-email --date=@$ENV{SOURCE_DATE_EPOCH}
  OUTPUT_VARIABLE debian_date OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
file(WRITE ${debian_build}/changelog
  "spotblue (${PROJECT_VERSION}) unstable; urgency=medium\n\n"
  "  * What changed stands in CHANGELOG.md of the package spotblue-doc.\n\n"
  " -- ${CPACK_PACKAGE_CONTACT}  ${debian_date}\n")
execute_process(COMMAND gzip -9nf ${debian_build}/changelog COMMAND_ERROR_IS_FATAL ANY)

# debian_package(<component> <package> <section> <text> [DEPENDS ..] [RECOMMENDS ..] [SUGGESTS ..])
function(debian_package component package section text)
  cmake_parse_arguments(ARG "" "DEPENDS;RECOMMENDS;SUGGESTS;MULTIARCH;ARCHITECTURE" "SCRIPTS" ${ARGN})
  string(TOUPPER ${component} COMPONENT)
  set(prefix CPACK_DEBIAN_${COMPONENT})
  set(${prefix}_PACKAGE_NAME ${package} PARENT_SCOPE)
  set(${prefix}_PACKAGE_SECTION ${section} PARENT_SCOPE)
  set(${prefix}_DESCRIPTION "${text}" PARENT_SCOPE)
  set(${prefix}_PACKAGE_DEPENDS "${ARG_DEPENDS}" PARENT_SCOPE)
  set(${prefix}_PACKAGE_RECOMMENDS "${ARG_RECOMMENDS}" PARENT_SCOPE)
  set(${prefix}_PACKAGE_SUGGESTS "${ARG_SUGGESTS}" PARENT_SCOPE)
  set(${prefix}_PACKAGE_MULTIARCH "${ARG_MULTIARCH}" PARENT_SCOPE)
  if(ARG_ARCHITECTURE)
    set(${prefix}_PACKAGE_ARCHITECTURE ${ARG_ARCHITECTURE} PARENT_SCOPE)
    set(${prefix}_PACKAGE_SHLIBDEPS OFF PARENT_SCOPE)
  else()
    set(${prefix}_PACKAGE_SHLIBDEPS ON PARENT_SCOPE)
  endif()
  set(${prefix}_PACKAGE_CONTROL_EXTRA "${ARG_SCRIPTS}" PARENT_SCOPE)
  set(CPACK_COMPONENTS_ALL ${CPACK_COMPONENTS_ALL} ${component} PARENT_SCOPE)
  install(FILES ${CMAKE_CURRENT_LIST_DIR}/copyright ${debian_build}/changelog.gz
    DESTINATION share/doc/${package} COMPONENT ${component})
endfunction()

math(EXPR SPOTBLUE_NEXT_PYTHON "${Python_VERSION_MINOR} + 1")
set(of_this "(= ${PROJECT_VERSION})")
set(CPACK_COMPONENTS_ALL "")
file(WRITE ${debian_build}/library/shlibs
  "libspotblue ${SPOTBLUE_SOVERSION} libspotblue${SPOTBLUE_SOVERSION} (>= ${PROJECT_VERSION})\n"
  "libspotblue_numbers ${SPOTBLUE_SOVERSION} libspotblue${SPOTBLUE_SOVERSION} (>= ${PROJECT_VERSION})\n")
file(WRITE ${debian_build}/library/triggers "activate-noawait ldconfig\n")

set(about "spotblue tells what fits what in a STEP assembly, how, and whether
that is what the job needs, before metal is cut. It is for people who
keep old machines alive.\n.\n")
debian_package(program spotblue science "judge the fits between parts of old machines on STEP models
${about}This package holds the program."
  DEPENDS "libspotblue${SPOTBLUE_SOVERSION} ${of_this}"
  RECOMMENDS "python3-spotblue ${of_this}"
  SUGGESTS "spotblue-doc, spotblue-draw"
  SCRIPTS ${debian_build}/library/triggers)  # hosts load the service by its name
debian_package(library libspotblue${SPOTBLUE_SOVERSION} libs "fits between parts of STEP models - shared libraries
${about}This package holds the shared libraries; libspotblue_numbers needs no
Open CASCADE."
  MULTIARCH same
  SCRIPTS ${debian_build}/library/shlibs ${debian_build}/library/triggers)
debian_package(development libspotblue-dev libdevel "fits between parts of STEP models - development files
${about}This package holds headers, static layers, and the files for CMake and
pkg-config. The static layers need what is recommended;
geometry/occt.hpp needs Open CASCADE's headers."
  DEPENDS "libspotblue${SPOTBLUE_SOVERSION} ${of_this}, libocct-modeling-data-dev, libocct-ocaf-dev"
  RECOMMENDS "libocct-visualization-dev, libocct-data-exchange-dev, libocct-draw-dev, libtbb-dev, libfontconfig-dev, libspdlog-dev, libfmt-dev, libssl-dev, libtomlplusplus-dev, libutf8proc-dev, pkg-config")
debian_package(python python3-spotblue python "fits between parts of STEP models - Python 3 module
${about}This package holds the module spotblue, and what the program's verbs
library and which run."
  DEPENDS "libspotblue${SPOTBLUE_SOVERSION} ${of_this}, python3 (>= ${Python_VERSION_MAJOR}.${Python_VERSION_MINOR}~), python3 (<< ${Python_VERSION_MAJOR}.${SPOTBLUE_NEXT_PYTHON})"
  RECOMMENDS "python3-numpy, python3-jinja2"
  SUGGESTS "python3-distributed"
  SCRIPTS ${CMAKE_CURRENT_LIST_DIR}/postinst ${CMAKE_CURRENT_LIST_DIR}/prerm)
debian_package(draw spotblue-draw science "fits between parts of STEP models - Open CASCADE's Tcl harness
${about}This package holds the plug-in for Open CASCADE's Tcl harness:
source /usr/share/spotblue/plugin.tcl"
  DEPENDS "libspotblue${SPOTBLUE_SOVERSION} ${of_this}, occt-draw")
debian_package(doc spotblue-doc doc "fits between parts of STEP models - documents and demo
${about}This package holds the documents, and the demo's mock-ups, job files
and manifest."
  ARCHITECTURE all SUGGESTS "spotblue")
include(CPack)
