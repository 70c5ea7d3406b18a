# The toolkits of Open CASCADE that we and our tests use, as the version found names them. The plug-in
# adds those of the harness.
set(SPOTBLUE_OCCT_TOOLKITS
  TKBO TKBRep TKBinXCAF TKBool TKCAF TKCDF TKFillet TKG2d TKG3d TKGeomAlgo TKGeomBase TKLCAF TKMath
  TKMesh TKPrim TKShHealing TKTopAlgo TKVCAF TKXCAF TKXSBase TKernel)
if(OpenCASCADE_VERSION VERSION_LESS 7.8)
  list(APPEND SPOTBLUE_OCCT_TOOLKITS TKSTEP TKSTEPAttr TKSTEPBase TKXDESTEP)
else()
  list(APPEND SPOTBLUE_OCCT_TOOLKITS TKDESTEP)
endif()
# And those that a test alone needs.
set(SPOTBLUE_OCCT_SWEEP_TOOLKITS TKOffset)

# For those that are not installed for others to link: Open CASCADE and its headers.
add_library(spotblue_occt INTERFACE)
target_include_directories(spotblue_occt SYSTEM INTERFACE ${OpenCASCADE_INCLUDE_DIR})
target_link_libraries(spotblue_occt INTERFACE ${SPOTBLUE_OCCT_TOOLKITS})
